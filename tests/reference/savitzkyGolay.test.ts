import { expect, test } from 'vitest';
import { lineThrough } from '../../packages/core/src/departures/lineThrough.js';

/**
 * The throttle's speed is the slope of a least-squares line. At even spacing that is the first derivative's filter of
 * A. Savitzky and M. J. E. Golay, Anal. Chem. 36 (1964) 1627 (citation from memory), for polynomials of degree 1 and 2.
 * Coefficients as computed with SciPy's `savgol_coeffs`.
 */
test.each([
  [10, [-2, -1, 0, 1, 2]],
  [28, [-3, -2, -1, 0, 1, 2, 3]],
  [60, [-4, -3, -2, -1, 0, 1, 2, 3, 4]],
])('the speed’s weights are the published ones, in parts of 1/%i', (norm, coefficients) => {
  const time = Float64Array.from(coefficients, (_, i) => i);
  const last = coefficients.length - 1;
  const weights = coefficients.map((_, at) => {
    const impulse = Float64Array.from(coefficients, (__, i) => (i === at ? 1 : 0));
    return norm * lineThrough({ time, mean: impulse }, 0, last).speed;
  });
  for (const [i, weight] of weights.entries()) expect(weight).toBeCloseTo(coefficients[i]!, 12);
});

test('the slope of a parabola is that in its middle', () => {
  const time = Float64Array.from({ length: 9 }, (_, i) => 2 + i / 100);
  const mean = time.map((at) => 3 * at * at - at);
  const { time: middle, speed } = lineThrough({ time, mean }, 0, 8);
  expect(middle).toBeCloseTo(2.04, 12);
  expect(speed).toBeCloseTo(6 * 2.04 - 1, 9);
});
