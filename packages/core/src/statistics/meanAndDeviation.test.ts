import { expect, test } from 'vitest';
import { meanAndDeviation } from './meanAndDeviation.js';

test('one value scatters by nothing', () => {
  expect(meanAndDeviation([7])).toEqual({ mean: 7, deviation: 0 });
});

test('a large offset costs no figures', () => {
  const { mean, deviation } = meanAndDeviation(
    Float64Array.of(1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16),
  );
  expect(mean).toBe(1e9 + 10);
  expect(deviation).toBeCloseTo(Math.sqrt(30), 13);
});
