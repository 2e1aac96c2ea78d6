import {
  type Circuit,
  type Determined,
  isDetermined,
  type NodeName,
  type OperatingPoint,
  operatingPoint,
  type PartName,
} from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { circuit, position } from './circuits.js';
import { nodalAnalysis } from './nodalAnalysis.js';

const runs = (count: number) => ({ numRuns: count * soak });

function number(value: Determined<number> | undefined): number {
  if (value === undefined || !isDetermined(value))
    throw new Error(`not a number: ${JSON.stringify(value)}`);
  return value;
}

/** What 64-digit arithmetic leaves of a current that is 0, in siemens of the largest source. */
const oracleRounding = 1e-40;

function largestSource({ source, load }: Circuit): number {
  return Math.max(source.volts, load.pullUp?.volts ?? 0);
}

/** Where each part lies, as drawn in the documentation of the circuit. */
const ends: Readonly<Record<PartName, readonly [NodeName, NodeName]>> = {
  source: ['common', 'sourceInside'],
  sourceResistance: ['sourceInside', 'sourcePlus'],
  limiter: ['sourcePlus', 'limited'],
  supplyLead: ['limited', 'top'],
  topResidual: ['top', 'trackTop'],
  trackAbove: ['trackTop', 'track'],
  trackBelow: ['track', 'trackBottom'],
  bottomResidual: ['trackBottom', 'bottom'],
  groundLead: ['bottom', 'common'],
  contact: ['track', 'wiper'],
  signalLead: ['wiper', 'signal'],
  pullDown: ['signal', 'common'],
  pullUp: ['pullUpFeed', 'signal'],
  pullUpSource: ['common', 'pullUpFeed'],
};

function partsOf(point: OperatingPoint): [PartName, number, number][] {
  return Object.entries(point.parts).map(([name, { amps, watts }]) => [
    name as PartName,
    number(amps),
    number(watts),
  ]);
}

function resistanceOf(part: PartName, at: Circuit, x: number): number {
  const { source, leads = {}, sensor, load } = at;
  const table: Partial<Record<PartName, number | undefined>> = {
    sourceResistance: source.ohms,
    limiter: at.limiter,
    supplyLead: leads.supply,
    topResidual: sensor.topResidual,
    trackAbove: sensor.track * (1 - x),
    trackBelow: sensor.track * x,
    bottomResidual: sensor.bottomResidual,
    groundLead: leads.ground,
    contact: sensor.contact,
    signalLead: leads.signal,
    pullDown: load.pullDown,
    pullUp: load.pullUp?.ohms,
  };
  return table[part] ?? 0;
}

/** Parts that lie in series carry one current. */
const legs: readonly (readonly PartName[])[] = [
  ['source', 'sourceResistance', 'limiter', 'supplyLead', 'topResidual', 'trackAbove'],
  ['trackBelow', 'bottomResidual', 'groundLead'],
  ['contact', 'signalLead'],
  ['pullUpSource', 'pullUp'],
];

/** A source or a part of 0 Ω is held to what the rounding of its leg's resistance allows. */
function legResistance(part: PartName, at: Circuit, x: number): number {
  const leg = legs.find((parts) => parts.includes(part)) ?? [];
  return leg.reduce((sum, name) => sum + resistanceOf(name, at, x), 0);
}

test('voltages and currents agree with modified nodal analysis at 64 digits', () => {
  let worstVolts = 0;
  fc.assert(
    fc.property(circuit, position, (at, x) => {
      const point = operatingPoint(at, x);
      const exact = nodalAnalysis(at, x);
      const scale = largestSource(at);
      for (const [node, volts] of Object.entries(point.nodes)) {
        const reference = exact.volts.get(node as NodeName);
        if (!reference) {
          expect(volts, node).toEqual({ kind: 'floating', reason: 'no-path-to-common' });
          continue;
        }
        const error = reference.minus(number(volts)).abs().toNumber();
        worstVolts = Math.max(worstVolts, error / scale);
        expect(error, node).toBeLessThanOrEqual(1e-12 * scale);
      }
      for (const [name, amps] of partsOf(point)) {
        const reference = exact.amps.get(name);
        const wanted = Math.abs(reference?.toNumber() ?? 0);
        const error = reference ? reference.minus(amps).abs().toNumber() : Math.abs(amps);
        const ohms = resistanceOf(name, at, x) || legResistance(name, at, x);
        const floor = (1e-15 * scale) / ohms + oracleRounding * scale;
        expect(error, name).toBeLessThanOrEqual(Math.max(1e-9 * wanted, floor));
      }
    }),
    runs(400),
  );
  console.log(`worst voltage error: ${worstVolts.toExponential(1)} of the largest source`);
});

test('currents balance at every node: |ΣI| is at most 1e-12·Σ|G·V|', () => {
  fc.assert(
    fc.property(circuit, position, (at, x) => {
      const point = operatingPoint(at, x);
      const sums = new Map<NodeName, { sum: number; size: number }>();
      for (const [name, amps] of partsOf(point)) {
        const ohms = resistanceOf(name, at, x) || legResistance(name, at, x);
        ends[name].forEach((node, end) => {
          const entry = sums.get(node) ?? { sum: 0, size: 0 };
          entry.sum += end === 0 ? -amps : amps;
          const volts = point.nodes[node];
          const known = volts !== undefined && isDetermined(volts) ? Math.abs(volts) : 0;
          entry.size += Math.max(Math.abs(amps), ohms > 0 ? known / ohms : 0);
          sums.set(node, entry);
        });
      }
      for (const [node, { sum, size }] of sums) {
        expect(Math.abs(sum), node).toBeLessThanOrEqual(1e-12 * size);
      }
    }),
    runs(1000),
  );
});

test('the power of all sources is the heat of all parts', () => {
  fc.assert(
    fc.property(circuit, position, (at, x) => {
      let balance = 0;
      let size = 0;
      for (const [name, , watts] of partsOf(operatingPoint(at, x))) {
        balance += name === 'source' || name === 'pullUpSource' ? watts : -watts;
        size += Math.abs(watts);
      }
      expect(Math.abs(balance)).toBeLessThanOrEqual(1e-12 * size);
    }),
    runs(1000),
  );
});

function scaled(at: Circuit, by: number): Circuit {
  const times = <T extends object>(part: T): T =>
    Object.fromEntries(
      Object.entries(part).map(([key, value]) => [key, key === 'volts' ? value : value * by]),
    ) as T;
  const { pullDown, pullUp } = at.load;
  return {
    source: times(at.source),
    limiter: at.limiter * by,
    leads: times(at.leads ?? {}),
    sensor: times(at.sensor),
    load: {
      ...(pullDown !== undefined && { pullDown: pullDown * by }),
      ...(pullUp && { pullUp: times(pullUp) }),
    },
  };
}

test('scaling all resistances leaves the voltages unchanged', () => {
  fc.assert(
    fc.property(circuit, position, fc.constantFrom(0.1, 3, 1000), (at, x, by) => {
      const before = operatingPoint(at, x).output;
      const after = operatingPoint(scaled(at, by), x).output;
      if (!isDetermined(before)) expect(after).toEqual(before);
      else expect(Math.abs(number(after) - before)).toBeLessThanOrEqual(1e-12 * largestSource(at));
    }),
    runs(1000),
  );
});

test('without a load the output is a straight line over the track', () => {
  fc.assert(
    fc.property(circuit, position, (at, x) => {
      const { contact: _, ...sensor } = at.sensor;
      const unloaded: Circuit = { source: at.source, limiter: at.limiter, sensor, load: {} };
      const [bottom, top] = [0, 1].map((end) => number(operatingPoint(unloaded, end).output));
      const line = bottom! + (top! - bottom!) * x;
      const nearly = operatingPoint({ ...unloaded, load: { pullDown: 1e18 } }, x).output;
      expect(Math.abs(number(operatingPoint(unloaded, x).output) - line)).toBeLessThanOrEqual(
        1e-13 * at.source.volts,
      );
      expect(Math.abs(number(nearly) - line)).toBeLessThanOrEqual(1e-11 * at.source.volts);
    }),
    runs(1000),
  );
});

test('swapping the end terminals with their residuals mirrors the output: V(1 − x)', () => {
  fc.assert(
    fc.property(circuit, fc.constantFrom(0, 0.125, 0.25, 0.5, 0.75, 1), (at, x) => {
      const { bottomResidual = 0, topResidual = 0 } = at.sensor;
      const plain: Circuit = {
        source: { volts: at.source.volts },
        limiter: 0,
        sensor: at.sensor,
        load: {},
      };
      const swapped: Circuit = {
        ...plain,
        sensor: { ...at.sensor, bottomResidual: topResidual, topResidual: bottomResidual },
      };
      const output = operatingPoint(plain, x).output;
      const mirrored = operatingPoint(swapped, 1 - x).output;
      if (!isDetermined(output)) return;
      expect(number(mirrored)).toBeCloseTo(at.source.volts - output, 11);
    }),
    runs(500),
  );
});
