import { expect, test } from 'vitest';
import { studentQuantile } from './studentQuantile.js';
import { studentTail } from './studentTail.js';

// JCGM 100:2008 (GUM), table G.2: t for a fraction of 95 %, 99 % and 95.45 % between −t and t.
test.each([
  [1, 0.95, 12.71],
  [2, 0.95, 4.3],
  [3, 0.95, 3.18],
  [10, 0.95, 2.23],
  [50, 0.95, 2.01],
  [2, 0.99, 9.92],
  [10, 0.99, 3.17],
  [100, 0.9545, 2.025],
])('%i degrees of freedom: %f of all lies within ±%f', (degrees, fraction, t) => {
  expect(studentQuantile((1 - fraction) / 2, degrees)).toBeCloseTo(t, t === 2.025 ? 3 : 2);
});

test('is the inverse of the tail; between whole degrees and beyond 1,000 it errs on the wide side', () => {
  for (const degrees of [1, 2, 7, 400])
    for (const probability of [0.4, 0.025, 1e-6])
      expect(studentTail(studentQuantile(probability, degrees), degrees)).toBeCloseTo(
        probability,
        9,
      );
  expect(studentQuantile(0.025, 2.9)).toBe(studentQuantile(0.025, 2));
  expect(studentQuantile(0.025, Infinity)).toBe(studentQuantile(0.025, 1000));
  expect(studentQuantile(0.025, Infinity)).toBeGreaterThan(1.959964);
});
