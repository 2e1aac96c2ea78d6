import { type Circuit, expectation, type Sweep, scoreSweep, simulateSweep } from '@truesweep/core';
import { describe, test } from 'vitest';
import { keeps } from './keeps.js';
import { keepsRatio } from './keepsRatio.js';

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
    keepsRatio(timed.get('scoreSweep'), timed.get('one bare pass'), {
      side: 'most',
      goal: 8,
      holds: 17,
    });
  });
});

// Where a bare pass over so many takes 30 µs, as many of them take the 15 ms that are asked.
describe('thirteen thousand samples', () => {
  test('scored while warm, and passed over five hundred times', async ({ bench, expect }) => {
    const sweep = recording(700);
    expect(sweep.time.length).toBeGreaterThan(12e3);
    const timed = await bench.compare(
      bench('scoreSweep, warm', () => {
        scoreSweep(sweep, expected);
      }),
      bench('five hundred bare passes', () => {
        for (let i = 0; i < 500; i++) barePass(sweep);
      }),
      { iterations: 60, warmupIterations: 30, time: 0 },
    );
    keepsRatio(timed.get('scoreSweep, warm'), timed.get('five hundred bare passes'), {
      side: 'most',
      goal: 1,
      holds: 1.5,
    });
  });
});

describe('from ten thousand to ten million samples', () => {
  test('the time grows no faster than the samples', async ({ bench }) => {
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
    keeps('time over samples: exponent', exponent, { side: 'most', goal: 1.05, holds: 1.05 });
  });
});
