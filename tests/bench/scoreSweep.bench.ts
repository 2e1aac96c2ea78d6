import { type Circuit, expectation, type Sweep, scoreSweep, simulateSweep } from '@truesweep/core';
import { describe, test } from 'vitest';
import { printRatio } from './printRatio.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.03 });

/** Twenty seconds of five passes over a worn spot, so many samples a second. */
function recording(rate: number): Sweep {
  const pass = [
    { kind: 'hold', seconds: 0.4 },
    { kind: 'turn', to: 1, seconds: 2.3, unevenness: 0.008 },
    { kind: 'hold', seconds: 0.4 },
    { kind: 'snap', seconds: 0.03, restitution: 0.3 },
    { kind: 'hold', seconds: 0.5 },
  ] as const;
  return simulateSweep({
    circuit,
    movements: Array.from({ length: 5 }, () => pass).flat(),
    recorder: { interval: 1 / rate, noise: 0.003, resolution: 0.002 },
    faults: [{ kind: 'worn-spot', travel: 0.3, width: 0.02, ohms: Number.POSITIVE_INFINITY }],
    seed: 3,
  }).sweep;
}

/** Sum, lowest and highest of both columns. */
function barePass({ time, signal }: Sweep): number {
  let sum = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const values of [time, signal]) {
    for (let i = 0; i < values.length; i++) {
      const value = values[i]!;
      sum += value;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return sum + low + high;
}

const options = { iterations: 5, warmupIterations: 2, time: 0 };

describe('ten million samples', () => {
  test('scored and passed over', async ({ bench, expect }) => {
    const sweep = recording(500_000);
    expect(sweep.time.length).toBeGreaterThan(9e6);
    expect(scoreSweep(sweep, expected).verdict).toBe('fail');
    const timed = await bench.compare(
      bench('scoreSweep', () => {
        scoreSweep(sweep, expected);
      }),
      bench('one bare pass', () => {
        barePass(sweep);
      }),
      options,
    );
    printRatio(timed.get('scoreSweep'), timed.get('one bare pass'), 'at most 25');
  });
});

describe('from ten thousand to ten million samples', () => {
  test('the time grows no faster than the samples', async ({ bench, expect }) => {
    const rates = [500, 5000, 50_000, 500_000];
    const sweeps = rates.map(recording);
    const timed = await bench.compare(
      ...(sweeps.map((sweep, i) =>
        bench(`${rates[i]} samples/s`, () => {
          scoreSweep(sweep, expected);
        }),
      ) as [ReturnType<typeof bench>, ReturnType<typeof bench>]),
      options,
    );
    const points = sweeps.map((sweep, i) => [
      Math.log(sweep.time.length),
      Math.log(timed.get(`${rates[i]} samples/s`).latency.min),
    ]) as [number, number][];
    const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
    const [x, y] = [mean(0), mean(1)];
    const exponent =
      points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) /
      points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
    console.log(`time ~ samples^${exponent.toFixed(2)} (asked: at most 1.05)`);
    expect(exponent).toBeGreaterThan(0);
  });
});
