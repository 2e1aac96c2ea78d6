import { expect, test } from 'vitest';
import { straightLine } from './straightLine.js';

test('points on a line give the line, far from the origin too, and leave nothing uncertain', () => {
  const x = Float64Array.from({ length: 50 }, (_, i) => 1e6 + i);
  const line = straightLine(
    x,
    x.map((at) => 3 - 0.25 * at),
  )!;
  expect(line.slope).toBeCloseTo(-0.25, 14);
  expect(line.intercept).toBeCloseTo(3, 8);
  expect(line.deviation).toBeLessThan(1e-9);
});

test('two points leave no scatter; one place gives no line', () => {
  expect(straightLine([1, 2], [5, 7])).toMatchObject({ slope: 2, intercept: 3, deviation: 0 });
  expect(straightLine([2, 2, 2], [1, 2, 3])).toBeUndefined();
});

test('about a middle of 0 slope and intercept are uncorrelated', () => {
  const line = straightLine([-1, 0, 1], [0, 1, 0])!;
  expect(line.correlation).toBeCloseTo(0, 15);
  // Worked by hand: residuals −1/3, 2/3, −1/3, so s² = 2/3; u(slope)² = s²/2, u(intercept)² = s²/3.
  expect(line.deviation ** 2).toBeCloseTo(2 / 3, 14);
  expect(line.slopeUncertainty ** 2).toBeCloseTo(1 / 3, 14);
  expect(line.interceptUncertainty ** 2).toBeCloseTo(2 / 9, 14);
});
