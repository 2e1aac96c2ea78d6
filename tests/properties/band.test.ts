import {
  type Circuit,
  drawOutput,
  expectedBand,
  expectedWindows,
  isDetermined,
  loadingErrors,
  operatingPoint,
  outputUncertainty,
  positionAt,
  type Tolerances,
} from '@truesweep/core';
import fc from 'fast-check';
import { derivative, evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { sensitivities } from '../../packages/core/src/circuit/sensitivities.js';
import { tolerancedParts } from '../../packages/core/src/expectation/tolerances.js';
import { soak } from '../counts.js';
import { hookUp, ohms } from './circuits.js';

const runs = (count: number) => ({ numRuns: count * soak, endOnFailure: true });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Benches of ordinary size: every part matters a little. */
const bench: fc.Arbitrary<Circuit> = fc.record({
  source: fc.record({ volts: between(3, 14), ohms: between(0.1, 10) }),
  limiter: between(100, 5000),
  leads: fc.record({ supply: between(0.1, 2), ground: between(0.1, 2), signal: between(0.1, 2) }),
  sensor: fc.record({
    track: between(500, 20_000),
    bottomResidual: between(1, 50),
    topResidual: between(1, 50),
    contact: between(1, 200),
    closedPosition: between(0.05, 0.2),
    openPosition: between(0.7, 0.95),
  }),
  load: fc.oneof(
    fc.record({ pullDown: ohms(1e4, 1e7) }),
    fc.record({
      pullDown: ohms(1e4, 1e7),
      pullUp: fc.record({ ohms: ohms(1e4, 1e6), volts: between(1, 6) }),
    }),
  ),
});

const part = fc.oneof(fc.constant(0), between(0, 0.2));
const tolerances: fc.Arbitrary<Tolerances> = fc.record({
  source: part,
  limiter: part,
  track: part,
  bottomResidual: part,
  contact: part,
  pullDown: part,
  pullUp: part,
  pullUpVolts: part,
  closedPosition: between(0, 0.03),
  openPosition: between(0, 0.03),
});

describe('tolerance band', () => {
  test('the corners contain every draw of bounded inputs', () => {
    fc.assert(
      fc.property(bench, tolerances, fc.constantFrom(0, 1, 2), fc.nat(), (at, off, i, seed) => {
        const { travel, low, high } = expectedBand(at, off, 3);
        const { smallest, largest } = drawOutput(at, off, travel[i]!, 2000, seed);
        expect(smallest).toBeGreaterThanOrEqual(low[i]! - 1e-12 * 14);
        expect(largest).toBeLessThanOrEqual(high[i]! + 1e-12 * 14);
      }),
      runs(60),
    );
  });

  test('the windows at the stops are the band’s ends', () => {
    fc.assert(
      fc.property(bench, tolerances, (at, off) => {
        const band = expectedBand(at, off, 2);
        const { closed, open } = expectedWindows(at, off);
        expect([band.low[0], band.high[0], band.low[1], band.high[1]]).toEqual([
          closed.low,
          closed.high,
          open.low,
          open.high,
        ]);
      }),
      runs(60),
    );
  });

  test('root sum of squares agrees with the standard deviation of the draws to 2 % for small tolerances', () => {
    const small = fc.record({
      source: between(0.005, 0.02),
      limiter: between(0.005, 0.02),
      track: between(0.005, 0.02),
      openPosition: between(0.001, 0.004),
    });
    fc.assert(
      fc.property(bench, small, fc.nat(), (at, off, seed) => {
        const { uncertainty, contributions } = outputUncertainty(at, off, 1);
        const { standardDeviation, standardDeviationError } = drawOutput(at, off, 1, 40_000, seed);
        const tolerance = 0.02 * uncertainty + 4 * standardDeviationError;
        expect(Math.abs(standardDeviation - uncertainty)).toBeLessThanOrEqual(tolerance);
        const sizes = contributions.map((one) => one.uncertainty);
        expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
      }),
      runs(60),
    );
  });
});

/** Central difference of the output by one part, from two steps so that the third derivative cancels (Richardson). */
function centralDifference(
  change: (by: number) => Circuit,
  size: number,
  position: number,
): number {
  const value = (by: number) => operatingPoint(change(by), position).output as number;
  const difference = (step: number) => (value(step) - value(-step)) / (2 * step);
  const step = 1e-3 * size;
  return (4 * difference(step / 2) - difference(step)) / 3;
}

describe('partial derivatives', () => {
  test('agree with central differences for every part', () => {
    fc.assert(
      fc.property(bench, between(0.05, 0.95), (at, position) => {
        const answers = sensitivities(at, position)!;
        const all = {
          source: 1,
          limiter: 1,
          track: 1,
          bottomResidual: 1,
          topResidual: 1,
          contact: 1,
          pullDown: 1,
          pullUp: 1,
          pullUpVolts: 1,
        };
        for (const { name, value, withValue, sensitivity } of tolerancedParts(at, all)) {
          const numeric = centralDifference((by) => withValue(at, value + by), value, position);
          const exact = sensitivity(answers);
          expect(Math.abs(exact - numeric) * value, name).toBeLessThanOrEqual(
            1e-6 * Math.abs(exact) * value + 1e-10 * at.source.volts,
          );
        }
        const slope =
          (operatingPoint(at, position + 1e-5).output as number) -
          (operatingPoint(at, position - 1e-5).output as number);
        expect(Math.abs(answers.perPosition - slope / 2e-5)).toBeLessThanOrEqual(
          1e-5 * at.source.volts,
        );
      }),
      runs(200),
    );
  });

  test('agree with symbolic derivatives of the one node equation', () => {
    const formula = '(V/(L+(1-x)*R) + U/P) / (1/(L+(1-x)*R) + 1/(x*R) + 1/D + 1/P)';
    const at: Circuit = {
      source: { volts: 5 },
      limiter: 1000,
      sensor: { track: 4000 },
      load: { pullDown: 47e3, pullUp: { ohms: 33e3, volts: 3.3 } },
    };
    for (const x of [0.1, 0.35, 0.6, 0.9]) {
      const scope = { V: 5, L: 1000, R: 4000, U: 3.3, P: 33e3, D: 47e3, x };
      const symbolic = (name: string) => derivative(formula, name).evaluate({ ...scope }) as number;
      const exact = sensitivities(at, x)!;
      expect(operatingPoint(at, x).output).toBeCloseTo(
        evaluate(formula, { ...scope }) as number,
        13,
      );
      const pairs = [
        [exact.perVolt.source!, 'V'],
        [exact.perOhm.limiter!, 'L'],
        [exact.perTrackOhm, 'R'],
        [exact.perVolt.pullUpSource!, 'U'],
        [exact.perOhm.pullUp!, 'P'],
        [exact.perOhm.pullDown!, 'D'],
        [exact.perPosition, 'x'],
      ] as const;
      for (const [value, name] of pairs) expect(value / symbolic(name), name).toBeCloseTo(1, 10);
    }
  });

  test('are finite or absent for every hook-up and fault', () => {
    fc.assert(
      fc.property(hookUp, between(0, 1), (at, position) => {
        const answers = sensitivities(at, position);
        if (!answers) return;
        const all = [
          ...Object.values(answers.perOhm),
          ...Object.values(answers.perVolt),
          answers.perTrackOhm,
          answers.perPosition,
        ];
        expect(all.every(Number.isFinite)).toBe(true);
      }),
      runs(500),
    );
  });
});

describe('loading errors', () => {
  test('no place on the way errs more than the largest', () => {
    fc.assert(
      fc.property(bench, between(0, 1), (at, travel) => {
        const { fromUnloaded, fromEndLine } = loadingErrors(at);
        const position = positionAt(at.sensor, travel);
        const loaded = operatingPoint(at, position).output;
        const unloaded = operatingPoint({ ...at, load: {} }, position).output;
        if (!isDetermined(loaded) || !isDetermined(unloaded)) throw new Error('must be determined');
        const slack = 1e-9 * at.source.volts;
        expect(Math.abs(unloaded - loaded)).toBeLessThanOrEqual(
          Math.abs(fromUnloaded.volts) + slack,
        );
        const [first, last] = [0, 1].map(
          (end) => operatingPoint(at, positionAt(at.sensor, end)).output as number,
        );
        const line = first! + (last! - first!) * travel;
        expect(Math.abs(line - loaded)).toBeLessThanOrEqual(Math.abs(fromEndLine.volts) + slack);
      }),
      runs(200),
    );
  });

  test('the rule of 4/27 is offered for a plain loaded track only', () => {
    const plain: Circuit = {
      source: { volts: 10 },
      limiter: 0,
      sensor: { track: 1000 },
      load: { pullDown: 1e4 },
    };
    expect(loadingErrors(plain).rule!.excess).toBeCloseTo(0.0222, 4);
    expect(loadingErrors({ ...plain, limiter: 100 }).rule).toBeUndefined();
    expect(
      loadingErrors({ ...plain, sensor: { track: 1000, closedPosition: 0.1 } }).rule,
    ).toBeUndefined();
  });
});
