import { orderStatistic } from './orderStatistic.js';

/** The median of values and their scaled median absolute deviation from it. */
export interface RobustScale {
  readonly median: number;
  /** Estimates the standard deviation of a normal distribution, whatever up to half of the values are. */
  readonly deviation: number;
}

/** 1/Φ⁻¹(3/4): makes the median absolute deviation of normal values their standard deviation. */
const normalScale = 1.482602218505602;

/**
 * The median and the scaled median absolute deviation, which outliers move little.
 *
 * Method: F. R. Hampel, "The influence curve and its role in robust estimation", JASA 69 (1974), from memory; the mean
 * of the two middle values where their number is even.
 *
 * @param values One number or more, none of them NaN.
 *
 * @example
 * medianAbsoluteDeviation(Float64Array.of(1, 2, 3, 100)).median // => 2.5
 */
export function medianAbsoluteDeviation(values: Float64Array): RobustScale {
  const sorted = Float64Array.from(values);
  const middle = median(sorted);
  for (let i = 0; i < sorted.length; i++) sorted[i] = Math.abs(values[i]! - middle);
  return { median: middle, deviation: normalScale * median(sorted) };
}

/** Puts the values into another order. */
function median(values: Float64Array): number {
  const half = values.length >> 1;
  const upper = orderStatistic(values, half);
  if (values.length % 2 === 1) return upper;
  let lower = values[0]!;
  for (let i = 1; i < half; i++) lower = Math.max(lower, values[i]!);
  return (lower + upper) / 2;
}
