import { expect, test } from 'vitest';
import { medianAbsoluteDeviation } from './medianAbsoluteDeviation.js';
import { randomNumbers } from './randomNumbers.js';

test('odd and even numbers of values; the values stay as they were', () => {
  const values = Float64Array.of(9, 1, 4, 2, 3);
  expect(medianAbsoluteDeviation(values).median).toBe(3);
  expect(medianAbsoluteDeviation(values).deviation).toBeCloseTo(1.4826, 4);
  expect(values).toEqual(Float64Array.of(9, 1, 4, 2, 3));
  expect(medianAbsoluteDeviation(Float64Array.of(4, 1)).median).toBe(2.5);
  expect(medianAbsoluteDeviation(Float64Array.of(5))).toEqual({ median: 5, deviation: 0 });
});

test('is the standard deviation of normal values, and a fifth of outliers moves it by less than its double', () => {
  const { normal } = randomNumbers(3);
  const values = Float64Array.from({ length: 30_000 }, () => 10 + 0.5 * normal());
  expect(medianAbsoluteDeviation(values).deviation).toBeCloseTo(0.5, 1);
  for (let i = 0; i < values.length; i += 5) values[i] = 1e6;
  expect(medianAbsoluteDeviation(values).deviation).toBeLessThan(1);
});
