/** The mean of repeated values and how they scatter. */
export interface MeanAndDeviation {
  readonly mean: number;
  /** Sample standard deviation, with n − 1 in the denominator; 0 for a single value. */
  readonly deviation: number;
}

/**
 * The mean and the sample standard deviation.
 *
 * Method: the corrected two-pass algorithm (T. F. Chan, G. H. Golub and R. J. LeVeque, "Algorithms for computing the
 * sample variance", The American Statistician 37, 1983; from memory): what rounding left of the mean is found from the
 * deviations and taken out of both.
 *
 * @param values One number or more.
 *
 * @example
 * meanAndDeviation([2, 4, 6]) // => { mean: 4, deviation: 2 }
 */
export function meanAndDeviation(values: ArrayLike<number>): MeanAndDeviation {
  const count = values.length;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += values[i]!;
  const first = sum / count;
  let rest = 0;
  let squares = 0;
  for (let i = 0; i < count; i++) {
    const off = values[i]! - first;
    rest += off;
    squares += off * off;
  }
  const variance = (squares - (rest * rest) / count) / Math.max(1, count - 1);
  return { mean: first + rest / count, deviation: Math.sqrt(Math.max(0, variance)) };
}
