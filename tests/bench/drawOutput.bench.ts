import { type Circuit, drawOutput } from '@truesweep/core';
import { test } from 'vitest';
import { randomNumbers } from '../../packages/core/src/statistics/randomNumbers.js';
import { keepsRatio } from './keepsRatio.js';

const draws = 1_000_000;
const travel = 0.4;
const seed = 7;
const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, bottomResidual: 20, topResidual: 20, contact: 50 },
  load: { pullDown: 10e3 },
};
const tolerances = { source: 0.02, limiter: 0.05, track: 0.2, contact: 0.5, pullDown: 0.05 };

/** The same generator and the same formula written out for this one circuit; mean and deviation only. */
function bareLoop() {
  const { uniform } = randomNumbers(seed);
  const drawn = (value: number, tolerance: number) =>
    value + value * tolerance * (2 * uniform() - 1);
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < draws; i++) {
    const volts = drawn(5, 0.02);
    const above = drawn(1000, 0.05) + 20;
    const track = drawn(5000, 0.2);
    const contact = drawn(50, 0.5);
    const pullDown = drawn(10e3, 0.05);
    const up = above + (1 - travel) * track;
    const down = 20 + travel * track;
    const branch = contact + pullDown;
    const atContact = (volts * down * branch) / (down * branch + up * branch + up * down);
    const out = (atContact * pullDown) / branch;
    sum += out;
    squares += out * out;
  }
  const mean = sum / draws;
  return { mean, standardDeviation: Math.sqrt(squares / draws - mean * mean) };
}

test('a million draws', async ({ bench, expect }) => {
  const bare = bareLoop();
  const drawn = drawOutput(circuit, tolerances, travel, draws, seed);
  // Unlike the bare loop, drawOutput draws for the stops too: other draws of the same distribution.
  expect(Math.abs(bare.mean - drawn.mean)).toBeLessThan(6 * drawn.meanError);
  expect(bare.standardDeviation / drawn.standardDeviation).toBeCloseTo(1, 2);
  const options = { iterations: 15, warmupIterations: 3, time: 0 };
  const timed = await bench.compare(
    bench('drawOutput', () => {
      drawOutput(circuit, tolerances, travel, draws, seed);
    }),
    bench('bare loop', () => {
      bareLoop();
    }),
    options,
  );
  keepsRatio(timed.get('drawOutput'), timed.get('bare loop'), {
    side: 'most',
    goal: 3,
    holds: 3,
  });
});
