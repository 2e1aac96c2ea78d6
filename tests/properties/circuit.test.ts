import {
  type Circuit,
  type Determined,
  isDetermined,
  type NodeName,
  type OperatingPoint,
  operatingPoint,
  type PartState,
} from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';
import { circuit, hookUp, position } from './circuits.js';
import { type Branch, type NodalSolution, nodalAnalysis } from './nodalAnalysis.js';

const runs = (count: number) => ({ numRuns: count * soak });

function number(value: Determined<number> | undefined): number {
  if (value === undefined || !isDetermined(value))
    throw new Error(`not a number: ${JSON.stringify(value)}`);
  return value;
}

const partsOf = (point: OperatingPoint) => Object.entries(point.parts) as [string, PartState][];
const nodesOf = (point: OperatingPoint) =>
  Object.entries(point.nodes) as [NodeName, Determined<number>][];

/** What 64-digit arithmetic leaves of a current that is 0, in siemens of the largest source. */
const oracleRounding = 1e-40;

function largestSource({ source, load, faults = [] }: Circuit): number {
  const wrong = faults.map((fault) => (fault.kind === 'wrong-source' ? fault.volts : 0));
  const pullUp = load.pullUp && 'volts' in load.pullUp ? load.pullUp.volts : 0;
  return Math.max(source.volts, pullUp, ...wrong);
}

/**
 * The resistance that a part's current is held to: its own, or for a source or a part of 0 Ω that of the
 * parts in series with it (nodes with two branches only).
 */
function resistanceOf(branch: Branch, branches: readonly Branch[]): number {
  const own = branch.ohms?.toNumber() ?? 0;
  if (own > 0) return own;
  let sum = 0;
  for (const end of ['from', 'to'] as const) {
    let here = branch;
    let node = branch[end];
    for (let steps = 0; steps < branches.length; steps++) {
      const joined = branches.filter(
        (one) => one !== here && (one.from === node || one.to === node),
      );
      if (joined.length !== 1 || node === 'common') break;
      here = joined[0]!;
      sum += here.ohms?.toNumber() ?? 0;
      node = here.from === node ? here.to : here.from;
    }
  }
  return sum;
}

function expectAgreement(at: Circuit, point: OperatingPoint, exact: NodalSolution): number {
  const scale = largestSource(at);
  let worst = 0;
  for (const [name, volts] of nodesOf(point)) {
    const node = name.startsWith('trackCut') ? cutName(at, name) : name;
    const reference = exact.volts.get(node);
    if (!reference) {
      expect(isDetermined(volts) || volts.kind, node).toMatch(/floating|undetermined/);
      continue;
    }
    const error = reference.minus(number(volts)).abs().toNumber();
    worst = Math.max(worst, error / scale);
    expect(error, node).toBeLessThanOrEqual(1e-12 * scale);
  }
  const biggest = Math.max(0, ...[...exact.amps.values()].map((amps) => Math.abs(amps.toNumber())));
  for (const [name, { amps }] of partsOf(point)) {
    if (!isDetermined(amps)) {
      expect(exact.loop, name).not.toBe('none');
      continue;
    }
    const branch = exact.branches.find((one) => one.name === name);
    const reference = exact.amps.get(name);
    const wanted = Math.abs(reference?.toNumber() ?? 0);
    const error = reference ? reference.minus(amps).abs().toNumber() : Math.abs(amps);
    const series = branch ? resistanceOf(branch, exact.branches) : 0;
    const floor = series > 0 ? (1e-15 * scale) / series : 1e-15 * biggest;
    expect(error, name).toBeLessThanOrEqual(
      Math.max(1e-9 * wanted, floor + oracleRounding * scale),
    );
  }
  return worst;
}

/** The description's name of a cut of the track. */
function cutName({ faults = [] }: Circuit, node: string): string {
  const ends = faults.flatMap((fault) =>
    fault.kind === 'shorted-track' ? [fault.from, fault.to] : [],
  );
  const cuts = [...new Set(ends)].sort((a, b) => a - b);
  return `track@${cuts[Number(node.slice('trackCut'.length)) - 1]}`;
}

describe('against modified nodal analysis at 64 digits', () => {
  test('voltages and currents of sound circuits', () => {
    let worst = 0;
    fc.assert(
      fc.property(circuit, position, (at, x) => {
        worst = Math.max(worst, expectAgreement(at, operatingPoint(at, x), nodalAnalysis(at, x)));
      }),
      runs(400),
    );
    console.log(
      `sound circuits: worst voltage error ${worst.toExponential(1)} of the largest source`,
    );
  });

  test('voltages and currents of every hook-up and fault', () => {
    let worst = 0;
    let limited = 0;
    let indeterminate = 0;
    fc.assert(
      fc.property(hookUp, position, (at, x) => {
        const point = operatingPoint(at, x);
        const exact = nodalAnalysis(at, x);
        if (exact.loop === 'contradictory') {
          indeterminate++;
          const states = partsOf(point).map(([, { amps }]) => isDetermined(amps) || amps.kind);
          expect(states).toContain('unbounded');
          return;
        }
        expect(point.sourceState).toBe(exact.atLimit ? 'constant-current' : 'constant-voltage');
        if (exact.atLimit) limited++;
        if (exact.loop === 'consistent') indeterminate++;
        worst = Math.max(worst, expectAgreement(at, point, exact));
      }),
      runs(2000),
    );
    console.log(
      `every hook-up: worst voltage error ${worst.toExponential(1)} of the largest source; ${limited} at the current limit, ${indeterminate} with 0 Ω loops`,
    );
  }, 240_000);
});

describe('Kirchhoff and power', () => {
  const anyCircuit = fc.oneof(circuit, hookUp);

  test('currents balance at every node: |ΣI| is at most 1e-12·Σ|G·V|', () => {
    fc.assert(
      fc.property(anyCircuit, position, (at, x) => {
        const point = operatingPoint(at, x);
        const { branches, loop } = nodalAnalysis(at, x);
        if (loop !== 'none') return;
        const sums = new Map<string, { sum: number; size: number }>();
        for (const branch of branches) {
          const amps = number(point.parts[branch.name as 'source']?.amps);
          const ohms = resistanceOf(branch, branches);
          for (const [node, sign] of [
            [branch.from, -1],
            [branch.to, 1],
          ] as const) {
            const volts = point.nodes[node as 'common'];
            const known =
              volts !== undefined && isDetermined(volts) ? Math.abs(volts) : largestSource(at);
            const entry = sums.get(node) ?? { sum: 0, size: 0 };
            entry.sum += sign * amps;
            entry.size += Math.max(Math.abs(amps), ohms > 0 ? known / ohms : 0);
            sums.set(node, entry);
          }
        }
        for (const [node, { sum, size }] of sums)
          expect(Math.abs(sum), node).toBeLessThanOrEqual(1e-12 * size);
      }),
      runs(400),
    );
  });

  test('the power of all sources is the heat of all parts', () => {
    fc.assert(
      fc.property(anyCircuit, position, (at, x) => {
        let balance = 0;
        let size = 0;
        for (const [name, { watts, amps }] of partsOf(operatingPoint(at, x))) {
          if (!isDetermined(watts) || !isDetermined(amps)) return;
          balance += name === 'source' || name === 'pullUpSource' ? watts : -watts;
          size += Math.abs(watts);
        }
        // Where sources nearly balance, V·I is what a part's own rounding of V²/R allows.
        expect(Math.abs(balance)).toBeLessThanOrEqual(
          1e-12 * size + 1e-27 * largestSource(at) ** 2,
        );
      }),
      runs(1000),
    );
  });
});

test('no NaN and no infinity leaves, whatever the hook-up', () => {
  fc.assert(
    fc.property(hookUp, position, (at, x) => {
      const check = (value: unknown): void => {
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        else if (typeof value === 'object' && value !== null) Object.values(value).forEach(check);
      };
      check(operatingPoint(at, x));
    }),
    runs(2000),
  );
});

/** The same circuit with every resistance multiplied, and current limits divided. */
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
      const volts = at.source.volts;
      expect(Math.abs(number(operatingPoint(unloaded, x).output) - line)).toBeLessThanOrEqual(
        1e-13 * volts,
      );
      expect(Math.abs(number(nearly) - line)).toBeLessThanOrEqual(1e-11 * volts);
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
