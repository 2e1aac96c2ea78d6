import { expect, test } from 'vitest';
import { median } from './median.js';

test('is the middle value, and leaves the values in their order', () => {
  const values = Float64Array.of(3, 1, 2);
  expect(median(values)).toBe(2);
  expect([...values]).toEqual([3, 1, 2]);
  expect(median(Float64Array.of(4, 1, 2, 3))).toBe(3);
  expect(median(new Float64Array(0))).toBeNaN();
});
