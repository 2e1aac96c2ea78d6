import { finiteBetween, wholeNumber } from '../guard.js';
import { orderStatistic } from './orderStatistic.js';
import { randomNumbers } from './randomNumbers.js';

/** Distribution of one input: the middle of it and its half width (`rectangular`) or standard deviation (`normal`). */
export interface DrawnInput {
  readonly value: number;
  readonly distribution: 'rectangular' | 'normal';
  readonly width: number;
}

/** What many draws of a model show. */
export interface MonteCarloResult {
  readonly mean: number;
  readonly standardDeviation: number;
  /** Standard error of the mean, and of the standard deviation. */
  readonly meanError: number;
  readonly standardDeviationError: number;
  /** The shortest interval's probabilistically symmetric kin: 2.5 % of the draws lie below `low`, 2.5 % above `high`. */
  readonly low: number;
  readonly high: number;
  readonly smallest: number;
  readonly largest: number;
}

/**
 * Propagates distributions through a model by drawing its inputs many times.
 *
 * Method: JCGM 101:2008, clause 7; the standard deviation's own error from the fourth moment.
 *
 * @param inputs The inputs, independent of each other.
 * @param model The result for one set of inputs; the array is used again for the next draw.
 * @param draws How many, 100 or more.
 * @param seed The same seed gives the same draws.
 * @throws InputError for an input that is no number or a number of draws below 100.
 *
 * @example
 * const sum = monteCarlo(
 *   [{ value: 1, distribution: 'rectangular', width: 3 }, { value: 2, distribution: 'normal', width: 1 }],
 *   ([a, b]) => a + b,
 *   100_000,
 *   1,
 * );
 * sum.mean.toFixed(1) // => '3.0'
 * sum.standardDeviation.toFixed(1) // => '2.0'
 */
export function monteCarlo(
  inputs: readonly DrawnInput[],
  model: (values: Float64Array) => number,
  draws: number,
  seed: number,
): MonteCarloResult {
  wholeNumber(draws, 100, 1e8, 'draws');
  inputs.forEach(({ value, width }, i) => {
    finiteBetween(value, -Number.MAX_VALUE, Number.MAX_VALUE, `inputs[${i}].value`);
    finiteBetween(width, 0, Number.MAX_VALUE, `inputs[${i}].width`);
  });
  const { uniform, normal } = randomNumbers(seed);
  const values = Float64Array.from(inputs, ({ value }) => value);
  const indexed = inputs.map((input, i) => ({ ...input, i })).filter(({ width }) => width > 0);
  const flat = indexed.filter(({ distribution }) => distribution === 'rectangular');
  const bell = indexed.filter(({ distribution }) => distribution === 'normal');
  const flatAt = Uint32Array.from(flat, ({ i }) => i);
  const flatLow = Float64Array.from(flat, ({ value, width }) => value - width);
  const flatWidth = Float64Array.from(flat, ({ width }) => 2 * width);
  const results = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    for (let k = 0; k < flatAt.length; k++) {
      values[flatAt[k]!] = flatLow[k]! + flatWidth[k]! * uniform();
    }
    for (const { i, value, width } of bell) values[i] = value + width * normal();
    results[draw] = model(values);
  }
  return summary(results);
}

function summary(results: Float64Array): MonteCarloResult {
  const count = results.length;
  let sum = 0;
  let smallest = results[0]!;
  let largest = smallest;
  for (let i = 0; i < count; i++) {
    const result = results[i]!;
    sum += result;
    if (result < smallest) smallest = result;
    if (result > largest) largest = result;
  }
  const mean = sum / count;
  let second = 0;
  let fourth = 0;
  for (let i = 0; i < count; i++) {
    const square = (results[i]! - mean) ** 2;
    second += square;
    fourth += square * square;
  }
  const variance = second / (count - 1);
  const standardDeviation = Math.sqrt(variance);
  const spread = Math.max(0, fourth / count - variance * variance);
  const lowRank = Math.round(0.025 * (count - 1));
  const highRank = Math.round(0.975 * (count - 1));
  // Finding the high one leaves what lies below it on its left, so that the low one is found among fewer.
  const high = orderStatistic(results, highRank);
  const low = orderStatistic(results.subarray(0, highRank + 1), lowRank);
  return {
    mean,
    standardDeviation,
    meanError: standardDeviation / Math.sqrt(count),
    standardDeviationError: variance > 0 ? Math.sqrt(spread / count) / (2 * standardDeviation) : 0,
    low,
    high,
    smallest,
    largest,
  };
}
