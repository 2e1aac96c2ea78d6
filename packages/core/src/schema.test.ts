import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../tests/counts.js';
import { hookUp } from '../../../tests/properties/circuits.js';
import { checkCircuit } from './circuit/checkCircuit.js';
import type { Circuit } from './circuit/circuit.js';
import { defaultCriteria } from './criteria.js';
import { circuitSchema, criteriaSchema, ratingsSchema, tolerancesSchema } from './schema.js';

/** The paths of what a schema refuses, each with its sentence. */
function refusals(schema: v.GenericSchema, input: unknown): [string | null, string][] {
  const { issues = [] } = v.safeParse(schema, input);
  return issues.map((issue) => [v.getDotPath(issue), issue.message]);
}

/** The same object with another value at a path; without the field where the value is `gone`. */
const gone = Symbol('gone');
function changed(base: object, path: string, value: unknown): unknown {
  const copy = structuredClone(base) as Record<string, unknown>;
  const names = path.split('.');
  const last = names.pop()!;
  const holder = names.reduce((at, name) => at[name] as Record<string, unknown>, copy);
  if (value === gone) delete holder[last];
  else holder[last] = value;
  return copy;
}

const circuit: Circuit = {
  source: { volts: 5, ohms: 0.1, currentLimit: 0.1 },
  limiter: 1000,
  leads: { supply: 0.2, ground: 0.2, signal: 0 },
  sensor: {
    track: 5000,
    bottomResidual: 20,
    topResidual: 20,
    contact: 50,
    terminalResistors: { wiper: 800, top: 0, bottom: 0 },
    closedPosition: 0.1,
    openPosition: 0.9,
  },
  load: { pullDown: 10e6, pullUp: { ohms: 10e3, volts: 5 }, common: 'sensor' },
  connection: { supply: 'top', ground: 'wiper', signal: 'bottom' },
  faults: [
    { kind: 'broken-lead', lead: 'ground' },
    { kind: 'shorted-leads', leads: ['supply', 'signal'] },
    { kind: 'shorted-terminals', terminals: ['top', 'wiper'] },
    { kind: 'shorted-signal', to: 'source' },
    { kind: 'broken-track', position: 0.2 },
    { kind: 'shorted-track', from: 0.2, to: 0.4 },
    { kind: 'lifted-wiper' },
    { kind: 'no-limiter' },
    { kind: 'wrong-source', volts: 12 },
    { kind: 'reversed-source' },
  ],
};

describe('circuitSchema', () => {
  test('reads a circuit from JSON as it is', () => {
    expect(v.parse(circuitSchema, JSON.parse(JSON.stringify(circuit)))).toEqual(circuit);
  });

  test('accepts every hook-up that core computes with', () => {
    fc.assert(
      fc.property(hookUp, (any) => {
        expect(refusals(circuitSchema, any)).toEqual([]);
      }),
      { numRuns: 300 * soak },
    );
  });

  test.each([
    ['source', gone],
    ['source.volts', -1],
    ['source.volts', '5 V'],
    ['source.ohms', 1e-13],
    ['source.currentLimit', 0],
    ['limiter', gone],
    ['limiter', -1],
    ['limiter', Number.NaN],
    ['leads.supply', null],
    ['sensor.track', 1e19],
    ['sensor.contact', -5],
    ['sensor.terminalResistors.wiper', '800'],
    ['sensor.closedPosition', 1.1],
    ['sensor.openPosition', -0.1],
    ['load', gone],
    ['load.pullDown', -1],
    ['load.pullUp.ohms', gone],
    ['load.pullUp.volts', 2e6],
    ['load.common', 'ground'],
    ['connection.signal', 'middle'],
    ['connection', { supply: 'top', ground: 'top', signal: 'wiper' }],
    ['faults.0.lead', 'red'],
    ['faults.1.leads.1', 'red'],
    ['faults.2.terminals.0', gone],
    ['faults.3.to', 'battery'],
    ['faults.4.position', 2],
    ['faults.5.to', gone],
    ['faults.8.volts', -12],
    ['faults.9.kind', 'swapped'],
  ] as const)('%s as %s is refused by its path, as core itself does', (path, value) => {
    const wrong = changed(circuit, path, value);
    const paths = refusals(circuitSchema, wrong).map(([at]) => at);
    expect(paths).toEqual([path]);
    expect(() => checkCircuit(wrong as Circuit)).toThrow(
      expect.objectContaining({ path: `circuit.${path.replaceAll(/\.(\d+)/g, '[$1]')}` }),
    );
  });

  test('a field that core has no name for is refused, with the names that there are', () => {
    expect(refusals(circuitSchema, changed(circuit, 'load.pulldown', 1e4))).toEqual([
      ['load.pulldown', 'There is no such field here; there are pullDown, pullUp, common.'],
    ]);
  });

  test('a pull-up without a voltage of its own is read too', () => {
    const fed = changed(circuit, 'load.pullUp', { ohms: 1e4, from: 'source' });
    expect(v.parse(circuitSchema, fed)).toEqual(fed);
    const wrong = changed(circuit, 'load.pullUp', { ohms: 1e4, from: 'battery' });
    expect(refusals(circuitSchema, wrong)).toEqual([
      ['load.pullUp.from', 'It must be one of: source, sensor.'],
    ]);
  });

  test.each([[undefined], [null], [5], ['a circuit'], [[]]])('%j is no circuit', (input) => {
    expect(refusals(circuitSchema, input).length).toBeGreaterThan(0);
  });
});

describe('tolerancesSchema', () => {
  const all = {
    source: 0.01,
    limiter: 0.05,
    track: 0.2,
    bottomResidual: 0.5,
    topResidual: 0.5,
    contact: 1,
    pullDown: 0.01,
    pullUp: 0.05,
    pullUpVolts: 0.02,
    closedPosition: 0.01,
    openPosition: 0.02,
  };

  test('reads all of them, and none', () => {
    expect(v.parse(tolerancesSchema, all)).toEqual(all);
    expect(v.parse(tolerancesSchema, {})).toEqual({});
  });

  test.each(Object.keys(all))('%s outside 0 to 1 is refused by its path', (name) => {
    for (const value of [-0.1, 5, '5 %', null]) {
      const paths = refusals(tolerancesSchema, { ...all, [name]: value }).map(([at]) => at);
      expect(paths).toEqual([name]);
    }
  });
});

describe('ratingsSchema', () => {
  const ratings = {
    track: { watts: 1, shortTerm: 2, fullTo: 40, zeroAt: 135 },
    wiper: { amps: 0.001, shortTerm: 0.01 },
    limiter: { watts: 0.25, fullTo: 70, zeroAt: 155 },
    source: { amps: 0.5 },
    ambient: 25,
  };

  test('reads ratings, and none', () => {
    expect(v.parse(ratingsSchema, ratings)).toEqual(ratings);
    expect(v.parse(ratingsSchema, {})).toEqual({});
  });

  test.each([
    ['track.watts', 0],
    ['track.shortTerm', -1],
    ['track.zeroAt', 40],
    ['track.zeroAt', gone],
    ['limiter.fullTo', -300],
    ['wiper.amps', '1 mA'],
    ['wiper.shortTerm', 0],
    ['source.amps', gone],
    ['ambient', -300],
    ['ambient', gone],
    ['sensor', { watts: 1 }],
  ] as const)('%s as %s is refused by its path', (path, value) => {
    const paths = refusals(ratingsSchema, changed(ratings, path, value)).map(([at]) => at);
    expect(paths).toEqual([path]);
  });
});

describe('criteriaSchema', () => {
  test('reads the defaults', () => {
    expect(v.parse(criteriaSchema, JSON.parse(JSON.stringify(defaultCriteria)))).toEqual(
      defaultCriteria,
    );
  });

  test.each(Object.keys(defaultCriteria))('%s is needed, and no text', (name) => {
    for (const value of [gone, 'a little', -1]) {
      const paths = refusals(criteriaSchema, changed(defaultCriteria, name, value));
      expect(new Set(paths.map(([at]) => at))).toEqual(new Set([name]));
    }
  });
});
