import { expect, test } from 'vitest';
import { judgeDuration } from './judgeDuration.js';

test.each([
  // A quick stroke by hand, and where it ends, take three tenths of a second.
  [5000, 0.31, 'conforms', 0.3],
  [5000, 0.29, 'cannot-tell', 0.3],
  [5000, 2e-9, 'cannot-tell', 0.3],
  // Of an interval of 0.1 s fifty take 5 s.
  [52, 5.1, 'conforms', 5],
  [50, 4.9, 'cannot-tell', 5],
  [2, 3600, 'cannot-tell', 180_000],
] as const)('%d samples in %d s: %s, at least %d s', (samples, duration, outcome, lowLimit) => {
  const check = judgeDuration({ samples, duration });
  expect(check).toMatchObject({ check: 'duration', outcome, unit: 's', measured: duration });
  expect(check.lowLimit).toBeCloseTo(lowLimit, 9);
  expect(check.margin).toBeCloseTo(duration - lowLimit, 9);
});
