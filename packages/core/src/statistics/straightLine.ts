import { column } from '../column.js';

/** A straight line y = intercept + slope · x fitted to points, with what the points' scatter makes uncertain of it. */
export interface StraightLine {
  /** y where x is 0, in the unit of y. */
  readonly intercept: number;
  /** Change of y for each unit of x. */
  readonly slope: number;
  /** Standard deviation of a point from the line, in the unit of y, with n − 2 in the denominator; 0 for two points. */
  readonly deviation: number;
  /** Standard uncertainty of the intercept from that scatter, in the unit of y. */
  readonly interceptUncertainty: number;
  /** Standard uncertainty of the slope from that scatter, in its unit. */
  readonly slopeUncertainty: number;
  /** Correlation coefficient of intercept and slope, a number from −1 to 1. */
  readonly correlation: number;
}

/** Of points whose spread squared is less all x are equal: quotients by it would overflow. */
const leastSpread = 1e-200;

/**
 * The straight line of least squares through points, with its covariance.
 *
 * A value predicted at x has the standard uncertainty √(u₁² + x²u₂² + 2x·r·u₁u₂) with u₁, u₂ and r as given here.
 *
 * Method: the normal equations about the means, JCGM 100:2008 (GUM) H.3; the deviations from a first line are fitted
 * once more, so that rounding in it is taken out.
 *
 * @param xs Two different numbers or more, between −10¹² and 10¹².
 * @param ys As many such numbers.
 * @returns Nothing where all x are equal.
 * @throws InputError `missing`, `not-a-list`, `length-mismatch`, `not-finite` or `out-of-range`, with the path.
 *
 * @example
 * const line = straightLine([0, 1, 2], [1, 3, 5]);
 * line.slope // => 2
 * line.intercept // => 1
 */
export function straightLine(
  xs: ArrayLike<number>,
  ys: ArrayLike<number>,
): StraightLine | undefined {
  const x = column(xs, undefined, 'xs');
  const y = column(ys, x.length, 'ys');
  const count = x.length;
  let [meanX, meanY] = [0, 0];
  for (let i = 0; i < count; i++) {
    meanX += x[i]! / count;
    meanY += y[i]! / count;
  }
  let [height, slope, squaresX, squares] = [meanY, 0, 0, 0];
  for (let pass = 0; pass < 3; pass++) {
    let [sum, product, sumX] = [0, 0, 0];
    squaresX = squares = 0;
    for (let i = 0; i < count; i++) {
      const off = x[i]! - meanX;
      const rest = y[i]! - height - slope * off;
      sum += rest;
      sumX += off;
      product += rest * off;
      squaresX += off * off;
      squares += rest * rest;
    }
    if (!(squaresX > leastSpread)) return undefined;
    if (pass === 2) break;
    const turn = (product - (sum * sumX) / count) / squaresX;
    slope += turn;
    height += (sum - turn * sumX) / count;
  }
  const deviation = count > 2 ? Math.sqrt(squares / (count - 2)) : 0;
  const reach = Math.sqrt(squaresX / count + meanX * meanX);
  const slopeUncertainty = deviation / Math.sqrt(squaresX);
  return {
    intercept: height - slope * meanX,
    slope,
    deviation,
    interceptUncertainty: slopeUncertainty * reach,
    slopeUncertainty,
    correlation: reach > 0 ? -meanX / reach : 0,
  };
}
