import { expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { hysteresis } from './hysteresis.js';

/** Four strokes there and back over 80 degrees; on the way back the ratio lags by 1 % around the middle. */
const shaft = Float64Array.from(
  { length: 8001 },
  (_, i) => 80 * (1 - Math.abs(((i / 1000) % 2) - 1)),
);
const lag = (at: number) => 0.01 * Math.exp(-(((at - 40) / 10) ** 2));
const noise = randomNumbers(5);
const ratio = shaft.map(
  (at, i) => at / 100 + (Math.floor(i / 1000) % 2 === 1 ? lag(at) : 0) + 0.0005 * noise.normal(),
);

test('the largest difference between the ways, where it is largest, with its scatter', () => {
  const found = hysteresis({ shaft, ratio });
  if (found.kind !== 'judged') throw new Error(found.reason);
  expect(found.value).toBeCloseTo(0.01, 3);
  expect(Math.abs(found.at - 40)).toBeLessThan(4);
  // Five readings and four strokes each way: 0.0005·√(2/20), itself known to about a third.
  expect(found.uncertainty).toBeGreaterThan(0.00004);
  expect(found.uncertainty).toBeLessThan(0.0004);
});

test('with one stroke each way the reading’s own uncertainty counts', () => {
  const part = { shaft: shaft.subarray(0, 2000), ratio: ratio.subarray(0, 2000) };
  expect(hysteresis({ ...part, uncertainty: 0.001 })).toMatchObject({
    uncertainty: Math.SQRT2 / 1000,
  });
  expect(hysteresis(part)).not.toHaveProperty('uncertainty');
});

test('one way only, and no way at all', () => {
  const one = { shaft: shaft.subarray(0, 1000), ratio: ratio.subarray(0, 1000) };
  expect(hysteresis(one)).toEqual({ kind: 'not-judged', reason: 'one-way' });
  const still = { shaft: new Float64Array(9), ratio: new Float64Array(9) };
  expect(hysteresis(still)).toEqual({ kind: 'not-judged', reason: 'no-movement' });
});
