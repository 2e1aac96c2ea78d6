import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { orderStatistic } from './orderStatistic.js';

test('is what stands at the rank after sorting; nothing larger before it, nothing smaller behind', () => {
  const values = fc.array(fc.oneof(fc.integer({ min: 0, max: 5 }), fc.double({ noNaN: true })), {
    minLength: 1,
    maxLength: 200,
  });
  fc.assert(
    fc.property(values, fc.nat(), (list, any) => {
      const rank = any % list.length;
      const numbers = Float64Array.from(list, (value) => value + 0);
      const sorted = numbers.toSorted();
      expect(orderStatistic(numbers, rank) + 0).toBe(sorted[rank]! + 0);
      expect(numbers.subarray(0, rank).every((value) => value <= sorted[rank]!)).toBe(true);
      expect(numbers.subarray(rank).every((value) => value >= sorted[rank]!)).toBe(true);
    }),
    { numRuns: 500 * soak },
  );
});

test('equal, rising and falling values', () => {
  expect(orderStatistic(new Float64Array(1000).fill(3), 500)).toBe(3);
  expect(
    orderStatistic(
      Float64Array.from({ length: 1001 }, (_, i) => i),
      700,
    ),
  ).toBe(700);
  expect(
    orderStatistic(
      Float64Array.from({ length: 1001 }, (_, i) => 1000 - i),
      700,
    ),
  ).toBe(700);
});
