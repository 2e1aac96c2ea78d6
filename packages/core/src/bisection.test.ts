import { expect, test } from 'vitest';
import { bisection } from './bisection.js';

test('closes in on a border to the last figure, from either side', () => {
  const [low, high] = bisection((at) => at * at < 2, 1, 2);
  expect(low * low).toBeLessThan(2);
  expect(high * high).toBeGreaterThanOrEqual(2);
  expect(high - low).toBe(2 ** -52);
});

test('stops once the bracket is as narrow as asked', () => {
  let asked = 0;
  const holds = (at: number) => {
    asked++;
    return at < 1 / 3;
  };
  const [low, high] = bisection(holds, 0, 1, 2 ** -10);
  expect(high - low).toBe(2 ** -10);
  expect(asked).toBe(10);
  expect(low).toBeLessThan(1 / 3);
  expect(high).toBeGreaterThan(1 / 3);
});

test.each([
  ['everywhere', () => true, [1 - 2 ** -53, 1]],
  ['nowhere', () => false, [0, 2 ** -200]],
])(
  'what holds %s leaves an end of the bracket where it is, after no more than 200 steps',
  (_, holds, bracket) => {
    expect(bisection(holds, 0, 1)).toEqual(bracket);
  },
);
