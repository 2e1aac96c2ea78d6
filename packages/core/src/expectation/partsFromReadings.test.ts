import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { ohms as anyOhms } from '../../../../tests/properties/circuits.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import type { Terminal } from '../circuit/terminals.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { modelledReading, type PartReading } from './partReading.js';
import { type FoundPart, partsFromReadings } from './partsFromReadings.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 20e3 },
};

const ohmsBetween = (one: Terminal, other: Terminal, position: number): PartReading => ({
  kind: 'ohms',
  between: [one, other],
  position,
  ohms: 0,
  uncertainty: 1,
});
const voltsAt = (position: number): PartReading => ({
  kind: 'volts',
  position,
  volts: 0,
  uncertainty: 1e-3,
});
/** The readings as a circuit makes them, each off by so many of its uncertainties. */
const read = (
  circuit: Circuit,
  plan: readonly PartReading[],
  off: readonly number[] = [],
): readonly PartReading[] =>
  plan.map((one, i) => {
    const value = modelledReading(circuit, one, '').value + (off[i] ?? 0) * one.uncertainty;
    return one.kind === 'ohms' ? { ...one, ohms: value } : { ...one, volts: value };
  });

const threePairs = [
  ohmsBetween('bottom', 'top', 0.5),
  ohmsBetween('bottom', 'wiper', 0),
  ohmsBetween('wiper', 'top', 1),
];
const withMiddle = [...threePairs, ohmsBetween('bottom', 'wiper', 0.5)];
const voltages = [0.1, 0.4, 0.65, 0.9, 1].map(voltsAt);

/** What is read, and which parts that determines. */
const plans: readonly (readonly [readonly FoundPart[], readonly PartReading[]])[] = [
  [['track', 'bottomResidual', 'topResidual'], threePairs],
  [['track', 'bottomResidual', 'topResidual', 'contact'], withMiddle],
  [['track', 'pullDown'], voltages],
  [['track', 'bottomResidual', 'pullDown'], voltages],
  [
    ['limiter', 'pullDown', 'track'],
    [...voltages, threePairs[0]!],
  ],
  [
    ['track', 'bottomResidual', 'topResidual', 'contact', 'pullDown', 'limiter'],
    [...withMiddle, ...voltages],
  ],
];

const anyBench: fc.Arbitrary<Circuit> = fc
  .record({
    track: anyOhms(500, 50e3),
    bottomResidual: anyOhms(1, 200),
    topResidual: anyOhms(1, 200),
    contact: anyOhms(1, 300),
    limiter: anyOhms(100, 5e3),
    pullDown: anyOhms(3e3, 100e3),
  })
  .map(({ limiter, pullDown, ...sensor }) => ({
    source: { volts: 5 },
    limiter,
    sensor,
    load: { pullDown },
  }));
const ohmsOf = ({ limiter, sensor, load }: Circuit, part: FoundPart): number =>
  ({ limiter, pullDown: load.pullDown!, ...sensor })[part as 'track'];
/** The bench with guesses in place of the parts that are looked for. */
const guessed = (circuit: Circuit, wanted: readonly FoundPart[], factor: number): Circuit => {
  const guess = (part: FoundPart) => ohmsOf(circuit, part) * (wanted.includes(part) ? factor : 1);
  const { source } = circuit;
  return {
    source,
    limiter: guess('limiter'),
    sensor: {
      track: guess('track'),
      bottomResidual: wanted.includes('bottomResidual') ? 0 : guess('bottomResidual'),
      topResidual: wanted.includes('topResidual') ? 0 : guess('topResidual'),
      contact: wanted.includes('contact') ? 0 : guess('contact'),
    },
    load: { pullDown: guess('pullDown') },
  };
};
const determined = (
  circuit: Circuit,
  wanted: readonly FoundPart[],
  readings: readonly PartReading[],
) => {
  const found = partsFromReadings(circuit, wanted, readings);
  if (found.kind !== 'determined') throw new Error(JSON.stringify(found));
  return found;
};

describe('partsFromReadings', () => {
  test('an ohmmeter’s model is the sum of the resistances between its terminals', () => {
    const sensor = { track: 5000, bottomResidual: 20, topResidual: 30, contact: 7 };
    const between = (one: Terminal, other: Terminal) =>
      modelledReading({ ...bench, sensor }, ohmsBetween(one, other, 0.2), '');
    expect(between('bottom', 'top').value).toBeCloseTo(5050, 9);
    expect(between('bottom', 'wiper')).toMatchObject({
      value: expect.closeTo(1027, 9),
      perTrackOhm: expect.closeTo(0.2, 12),
      perOhm: { bottomResidual: 1, topResidual: 0, contact: 1 },
    });
    expect(between('wiper', 'top').value).toBeCloseTo(4037, 9);
  });

  test('exact readings of any bench give its parts back', () => {
    fc.assert(
      fc.property(
        anyBench,
        fc.constantFrom(...plans),
        fc.constantFrom(0.3, 1, 3),
        (circuit, [wanted, plan], factor) => {
          const start = guessed(circuit, wanted, factor);
          const { parts, residuals } = determined(start, wanted, read(circuit, plan));
          for (const part of wanted) {
            const truth = ohmsOf(circuit, part);
            expect(Math.abs(parts[part]!.ohms / truth - 1), part).toBeLessThan(1e-6);
          }
          for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 150 * soak },
    );
  });

  test('a heavy load with little limiter fits almost as a light one with more: the better fit is found', () => {
    const truth: Circuit = {
      ...bench,
      limiter: 1200,
      sensor: { track: 500, bottomResidual: 52, topResidual: 1, contact: 1 },
      load: { pullDown: 9800 },
    };
    const wanted = ['limiter', 'pullDown', 'track'] as const;
    const start = {
      ...truth,
      limiter: truth.limiter * 0.2,
      sensor: { ...truth.sensor, track: 500 * 0.2 },
      load: { pullDown: truth.load.pullDown! * 0.2 },
    };
    const { parts } = determined(start, wanted, read(truth, [...voltages, threePairs[0]!]));
    expect(parts.limiter!.ohms).toBeCloseTo(truth.limiter, 4);
    expect(parts.pullDown!.ohms).toBeCloseTo(truth.load.pullDown!, 2);
  });

  test('with noise each part is within five of its uncertainties, and chi-square fits its freedom', () => {
    let sum = 0;
    let freedom = 0;
    fc.assert(
      fc.property(
        anyBench,
        fc.constantFrom(...plans),
        fc.integer(),
        (circuit, [wanted, plan], seed) => {
          const random = randomNumbers(seed);
          const off = plan.map(() => random.normal());
          const fine = plan.map((one) => ({ ...one, uncertainty: one.uncertainty / 100 }));
          const found = determined(circuit, wanted, read(circuit, fine, off));
          for (const part of wanted) {
            const { ohms, uncertainty } = found.parts[part]!;
            const truth = ohmsOf(circuit, part);
            // Where the noise alone moves a part far the straight model behind the uncertainty ends.
            if (uncertainty < 0.02 * truth)
              expect(Math.abs(ohms - truth), part).toBeLessThan(5 * uncertainty);
          }
          sum += found.chiSquare ?? 0;
          freedom += found.degreesOfFreedom;
        },
      ),
      { numRuns: 150 * soak },
    );
    expect(freedom).toBeGreaterThan(50);
    // Five standard deviations of a chi-square divided by its freedom.
    expect(Math.abs(sum / freedom - 1)).toBeLessThan(5 * Math.sqrt(2 / freedom));
  });

  test('the covariance is that of the plain sum: track and residual of two ohmmeter readings', () => {
    const found = determined(
      bench,
      ['track', 'bottomResidual'],
      [
        { kind: 'ohms', between: ['bottom', 'top'], position: 0, ohms: 4300, uncertainty: 3 },
        { kind: 'ohms', between: ['wiper', 'bottom'], position: 0, ohms: 50, uncertainty: 2 },
      ],
    );
    expect(found.parts.track!.uncertainty).toBeCloseTo(Math.sqrt(13), 9);
    expect(found.covariance.flat()).toEqual([13, -4, -4, 4].map((at) => expect.closeTo(at, 8)));
    expect(found).toMatchObject({ degreesOfFreedom: 0 });
    expect(found).not.toHaveProperty('chiSquare');
  });

  test('spare readings that disagree show in chi-square, not in the uncertainty', () => {
    const twice = [4300, 4330].map(
      (ohms): PartReading => ({
        kind: 'ohms',
        between: ['bottom', 'top'],
        position: 0,
        ohms,
        uncertainty: 5,
      }),
    );
    const { parts, chiSquare, residuals } = determined(bench, ['track'], twice);
    expect(parts.track!.ohms).toBeCloseTo(4315, 6);
    expect(parts.track!.uncertainty).toBeCloseTo(5 / Math.SQRT2, 9);
    expect(chiSquare).toBeCloseTo(18, 6);
    expect(residuals).toEqual([expect.closeTo(-15, 6), expect.closeTo(15, 6)]);
  });

  test('a residual that the readings would put below nothing is held at 0 Ω', () => {
    const found = determined(
      bench,
      ['track', 'bottomResidual'],
      [
        { kind: 'ohms', between: ['bottom', 'top'], position: 0, ohms: 4300, uncertainty: 1 },
        { kind: 'ohms', between: ['bottom', 'wiper'], position: 0, ohms: 0, uncertainty: 1 },
        { kind: 'ohms', between: ['bottom', 'wiper'], position: 0.5, ohms: 2140, uncertainty: 1 },
      ],
    );
    expect(found.parts.bottomResidual!.ohms).toBe(0);
    expect(found.parts.track!.ohms).toBeCloseTo((4300 + 0.5 * 2140) / 1.25, 6);
  });

  test('voltages alone fix ratios only: one known or measured resistance is needed', () => {
    const wanted = ['track', 'pullDown', 'limiter'] as const;
    const readings = read(bench, voltages);
    expect(partsFromReadings(bench, wanted, readings)).toEqual({
      kind: 'not-determined',
      parameters: wanted,
      reason: 'no-known-resistance',
    });
    const measured = read(bench, [...voltages, threePairs[0]!]);
    expect(determined(bench, wanted, measured).parts.track!.ohms).toBeCloseTo(5000, 3);
    const known = determined(
      { ...bench, load: { pullDown: 9e3 } },
      ['track', 'pullDown'],
      readings,
    );
    expect(known.parts.pullDown!.ohms).toBeCloseTo(20e3, 2);
  });

  test('a part that no reading answers to is named, and so are parts that only answer together', () => {
    const unloaded = { ...bench, load: {} };
    expect(partsFromReadings(unloaded, ['track', 'contact'], read(unloaded, voltages))).toEqual({
      kind: 'not-determined',
      parameters: ['contact'],
      reason: 'no-effect',
    });
    expect(partsFromReadings(bench, ['track', 'pullDown'], read(bench, threePairs))).toMatchObject({
      parameters: ['pullDown'],
      reason: 'no-effect',
    });
    const atClosed = [0, 0, 0].map((at) => ohmsBetween('bottom', 'wiper', at));
    expect(
      partsFromReadings(
        bench,
        ['track', 'bottomResidual', 'contact'],
        read(bench, [...atClosed, ohmsBetween('bottom', 'top', 0), ohmsBetween('top', 'wiper', 0)]),
      ).kind,
    ).toBe('determined');
    expect(
      partsFromReadings(
        bench,
        ['track', 'topResidual', 'bottomResidual'],
        read(bench, [threePairs[0]!, threePairs[0]!, threePairs[1]!]),
      ),
    ).toEqual({
      kind: 'not-determined',
      parameters: ['track', 'topResidual'],
      reason: 'not-separable',
    });
    expect(
      partsFromReadings(bench, ['track', 'topResidual'], read(bench, [threePairs[0]!])),
    ).toMatchObject({ parameters: ['track', 'topResidual'], reason: 'too-few-readings' });
  });

  test('readings that no circuit makes end with a bad fit or a refusal, not with a wrong number alone', () => {
    const found = partsFromReadings(
      bench,
      ['track'],
      [
        { kind: 'volts', position: 0.5, volts: -3, uncertainty: 1e-3 },
        { kind: 'volts', position: 0.9, volts: 2, uncertainty: 1e-3 },
      ],
    );
    if (found.kind === 'determined') expect(found.chiSquare).toBeGreaterThan(1000);
    else expect(['not-determined', 'not-converged']).toContain(found.kind);
  });

  test('the voltages that it fits are those of the operating point', () => {
    const { value } = modelledReading(bench, voltsAt(0.4), '');
    expect(value).toBe(operatingPoint(bench, 0.4).output);
  });

  const good = threePairs[0]!;
  test.each([
    [['track'], [], 'readings'],
    [[], [good], 'wanted'],
    [['track', 'track'], [good], 'wanted[1]'],
    [['source'], [good], 'wanted[0]'],
    [['track'], [{ ...good, kind: 'amps' }], 'readings[0].kind'],
    [['track'], [{ ...good, position: 2 }], 'readings[0].position'],
    [['track'], [{ ...good, uncertainty: 0 }], 'readings[0].uncertainty'],
    [['track'], [{ ...good, ohms: Number.POSITIVE_INFINITY }], 'readings[0].ohms'],
    [['track'], [{ ...good, between: ['top', 'top'] }], 'readings[0].between'],
    [['track'], [{ ...good, between: ['top', 'plus'] }], 'readings[0].between[1]'],
    [['track'], [{ ...voltsAt(0), volts: Number.NaN }], 'readings[0].volts'],
  ])('refuses %j from %j at %s', (wanted, readings, path) => {
    expect(() =>
      partsFromReadings(bench, wanted as FoundPart[], readings as PartReading[]),
    ).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });

  test('refuses a part without a guess, and a reading across nothing that conducts', () => {
    expect(() => partsFromReadings({ ...bench, load: {} }, ['pullDown'], [good])).toThrow(
      expect.objectContaining({ code: 'missing', path: 'circuit.load.pullDown' }),
    );
    expect(() => partsFromReadings({ ...bench, limiter: 0 }, ['limiter'], [good])).toThrow(
      expect.objectContaining({ code: 'zero', path: 'circuit.limiter' }),
    );
    const lifted: Circuit = { ...bench, faults: [{ kind: 'lifted-wiper' }] };
    expect(() => partsFromReadings(lifted, ['track'], [threePairs[1]!])).toThrow(
      expect.objectContaining({ code: 'no-output', path: 'readings[0]' }),
    );
  });
});
