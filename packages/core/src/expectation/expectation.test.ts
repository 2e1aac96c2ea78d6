import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { expectation } from './expectation.js';
import { expectedCurve } from './expectedCurve.js';
import { expectedWindows } from './expectedWindows.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 100e3 },
};

describe('expectedCurve', () => {
  test('is the operating point at each travel', () => {
    const { travel, volts } = expectedCurve(circuit, 5);
    expect(Array.from(travel)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(volts[1]).toBeCloseTo(operatingPoint(circuit, 0.3).output as number, 12);
  });

  test('a falling sensor falls', () => {
    const falling = { ...circuit, sensor: { track: 4000, closedPosition: 0.9, openPosition: 0.1 } };
    expect(Array.from(expectedCurve(falling, 3).volts)).toEqual(
      Array.from(expectedCurve(circuit, 3).volts).reverse(),
    );
  });

  test.each([1, 2.5, 1e9, Number.NaN])('refuses %d points', (points) => {
    expect(() => expectedCurve(circuit, points)).toThrow(
      expect.objectContaining({ path: 'points' }),
    );
  });

  test('refuses a circuit whose output floats', () => {
    const open: Circuit = {
      ...circuit,
      sensor: { track: 4000, contact: Number.POSITIVE_INFINITY },
      load: {},
    };
    expect(() => expectedCurve(open)).toThrow(expect.objectContaining({ code: 'no-output' }));
  });
});

describe('expectedWindows', () => {
  test('a track that loads its own limiter has its highest reading inside its tolerance', () => {
    // V = 5 xT·R/(xT(L + (1 − x)T) + R(L + T)) is highest at T = √(R·L/(x(1 − x))).
    const highest = Math.sqrt((1e4 * 1000) / 0.25);
    const turning: Circuit = {
      ...circuit,
      sensor: { track: highest * 1.05, closedPosition: 0.5 },
      load: { pullDown: 1e4 },
    };
    const best = { ...turning, sensor: { ...turning.sensor, track: highest } };
    const { closed } = expectedWindows(turning, { track: 0.2 });
    expect(closed.high).toBeCloseTo(operatingPoint(best, 0.5).output as number, 12);
    expect(closed.high).toBeGreaterThan(closed.nominal);
  });

  test('without tolerances low, nominal and high are one', () => {
    const { closed } = expectedWindows(circuit);
    expect(closed.low).toBe(closed.nominal);
    expect(closed.high).toBe(closed.nominal);
  });

  test('contains the reading of every sensor and hook-up within the tolerances', () => {
    const tolerances = {
      source: 0.02,
      limiter: 0.05,
      track: 0.2,
      pullDown: 0.1,
      closedPosition: 0.02,
    };
    const { closed } = expectedWindows(circuit, tolerances);
    for (const [v, l, t, d, x] of [
      [1, 1, 1, 1, 1],
      [-1, 1, -1, 1, -1],
      [1, -1, 1, -0.5, 0.5],
      [0, 0.3, -1, 1, 0],
    ]) {
      const at: Circuit = {
        source: { volts: 5 * (1 + 0.02 * v!) },
        limiter: 1000 * (1 + 0.05 * l!),
        sensor: { track: 4000 * (1 + 0.2 * t!) },
        load: { pullDown: 100e3 * (1 + 0.1 * d!) },
      };
      const { output } = operatingPoint(at, 0.1 + 0.02 * x!);
      expect(output).toBeGreaterThanOrEqual(closed.low);
      expect(output).toBeLessThanOrEqual(closed.high);
    }
  });

  test('a strong pull-up bends the curve: the extreme inside the tolerance counts', () => {
    const bent: Circuit = {
      source: { volts: 5 },
      limiter: 0,
      sensor: { track: 20e3, closedPosition: 0.5, openPosition: 1 },
      load: { pullUp: { ohms: 1000, volts: 5 } },
    };
    const volts = Array.from(expectedCurve({ ...bent, sensor: { track: 20e3 } }, 1001).volts);
    const low: Circuit = {
      ...bent,
      load: { pullUp: { ohms: 1000, volts: 0 } },
      sensor: { ...bent.sensor },
    };
    expect(expectedWindows(bent, { closedPosition: 0.5 }).closed.high).toBeGreaterThanOrEqual(
      Math.max(...volts) - 1e-9,
    );
    expect(expectedWindows(low, { closedPosition: 0.1 }).closed.low).toBeLessThan(
      expectedWindows(low).closed.low,
    );
  });

  test.each([-0.1, 2, Number.NaN])('refuses the tolerance %d', (track) => {
    expect(() => expectedWindows(circuit, { track })).toThrow(
      expect.objectContaining({ path: 'tolerances.track' }),
    );
  });
});

describe('expectation', () => {
  test('a pull-down rests at common, a pull-up at its voltage, no load nowhere', () => {
    expect(expectation(circuit).restLevel).toBe(0);
    expect(
      expectation({ ...circuit, load: { pullUp: { ohms: 1e4, volts: 3.3 } } }).restLevel,
    ).toBeCloseTo(3.3, 12);
    expect(expectation({ ...circuit, load: {} })).not.toHaveProperty('restLevel');
  });
});
