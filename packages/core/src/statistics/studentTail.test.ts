import { expect, test } from 'vitest';
import { studentTail } from './studentTail.js';

// Percentage points of Student's t, of any statistical table (from memory).
test.each([
  [1, 6.314, 0.05],
  [1, 63.657, 0.005],
  [2, 4.303, 0.025],
  [3, 5.841, 0.005],
  [4, 2.132, 0.05],
  [5, 4.032, 0.005],
  [10, 1.812, 0.05],
  [30, 2.042, 0.025],
])('%d degrees of freedom: above %d lies %d', (degreesOfFreedom, t, tail) => {
  expect(studentTail(t, degreesOfFreedom)).toBeCloseTo(tail, 4);
});

test('its ends', () => {
  expect(studentTail(0, 3)).toBe(0.5);
  expect(studentTail(Infinity, 3)).toBe(0);
});
