import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runningMedian } from './runningMedian.js';

test('agrees with sorting each window', () => {
  const values = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(values, fc.integer({ min: 0, max: 9 }), (list, halfWidth) => {
      const medians = runningMedian(Float64Array.from(list), halfWidth);
      const sorted = list.map((_, i) => {
        const reach = Math.min(halfWidth, i, list.length - 1 - i);
        return list.slice(i - reach, i + reach + 1).sort((a, b) => a - b)[reach];
      });
      expect(Array.from(medians)).toEqual(sorted);
    }),
  );
});

test('takes out a short dropout and leaves a ramp alone', () => {
  const ramp = Float64Array.from({ length: 50 }, (_, i) => i);
  expect(runningMedian(ramp, 7)).toEqual(ramp);
  const dropped = Float64Array.from(ramp, (value, i) => (i >= 20 && i < 24 ? 0 : value));
  expect(
    Math.max(...runningMedian(dropped, 7).map((value, i) => Math.abs(value - ramp[i]!))),
  ).toBeLessThan(5);
});
