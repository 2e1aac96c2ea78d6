import { independentLinearity, type ShaftReadings } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

function lineOf(readings: ShaftReadings) {
  const linearity = independentLinearity(readings);
  if (linearity.kind !== 'judged') throw new Error(linearity.reason);
  return linearity;
}

/**
 * Worked by hand on the points (0, 0), (1, 2), (2, 1), (3, 3). The line y = ¾ + ½x leaves −¾, +¾, −¾, +¾: equal
 * deviations of alternating sign at three places or more, and by Chebyshev's theorem (P. L. Chebyshev, 1854; from memory) no
 * line leaves less. The line of least squares, y = 3/10 + 4/5·x, leaves up to 9/10.
 */
test('the best line through four points worked by hand is y = 3/4 + x/2, with 3/4 left', () => {
  const { value, line } = lineOf({
    shaft: Float64Array.of(0, 1, 2, 3),
    ratio: Float64Array.of(0, 2, 1, 3),
  });
  expect(value).toBeCloseTo(3 / 4, 15);
  expect(line.slope).toBeCloseTo(1 / 2, 15);
  expect(line.intercept).toBeCloseTo(3 / 4, 15);
});

/**
 * The best straight lines of x² and of √x on 0 … 1 are x − 1/8 and x + 1/8, each off by 1/8; that of eˣ is parallel to its
 * chord and off by half of what that is off. Textbook examples of approximation theory (from memory), each worked here
 * by calculus: a convex function is farthest from its best line at both ends and where its slope is the chord's.
 */
describe('best straight lines of functions', () => {
  const shaft = Float64Array.from({ length: 40_001 }, (_, i) => i / 40_000);

  test.each([
    ['x²', (x: number) => x * x, 1, -1 / 8, 1 / 8],
    ['√x', Math.sqrt, 1, 1 / 8, 1 / 8],
  ] as const)('%s', (_, of, slope, intercept, left) => {
    const { value, line } = lineOf({ shaft, ratio: shaft.map((x) => of(x)) });
    expect(value).toBeCloseTo(left, 9);
    expect(line.slope).toBeCloseTo(slope, 9);
    expect(line.intercept).toBeCloseTo(intercept, 9);
  });

  test('eˣ', () => {
    const { value, line } = lineOf({ shaft, ratio: shaft.map(Math.exp) });
    const slope = Math.E - 1;
    // The chord through both ends is 1 + (e − 1)x; eˣ lies farthest below it where its slope is the chord's.
    const below = 1 + slope * Math.log(slope) - slope;
    expect(value).toBeCloseTo(below / 2, 9);
    expect(line.slope).toBeCloseTo(slope, 9);
    expect(line.intercept).toBeCloseTo(1 - below / 2, 9);
  });
});
