import { type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween, refuse, wholeNumber } from '../guard.js';
import { lowestValues } from './lowestValues.js';
import { randomNumbers } from './randomNumbers.js';

/** Distribution of one input: the middle of it and its half width (`rectangular`) or standard deviation (`normal`). */
export interface DrawnInput {
  /** The middle of it, in the input's unit; any finite number. */
  readonly value: number;
  /** Whether all values within the width are as likely, or those near the middle more. */
  readonly distribution: 'rectangular' | 'normal';
  /** Half width (`rectangular`) or standard deviation (`normal`), in the input's unit, 0 or more. */
  readonly width: number;
}

/** Beyond this the fourth powers of a result would overflow. */
const most = 1e60;

const inputRules: FieldRules = {
  value: between(-most, most),
  distribution: ['rectangular', 'normal'],
  width: between(0, most),
};

/** What many draws of a model show. */
export interface MonteCarloResult {
  /** Mean of the draws, in the unit of the result. */
  readonly mean: number;
  /** Their standard deviation, in that unit. */
  readonly standardDeviation: number;
  /** Standard error of the mean, in that unit. */
  readonly meanError: number;
  /** Standard error of the standard deviation, in that unit. */
  readonly standardDeviationError: number;
  /** 2.5 % of the draws lie below it, in that unit: the lower end of the probabilistically symmetric interval of 95 %. */
  readonly low: number;
  /** 2.5 % of the draws lie above it, in that unit: the upper end of that interval. */
  readonly high: number;
  /** The smallest of the draws, in that unit. */
  readonly smallest: number;
  /** The largest of the draws, in that unit. */
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
  listOf(inputRules, 0, 1000)(inputs, 'inputs');
  finiteBetween(seed, -Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER, 'seed');
  if (typeof model !== 'function')
    refuse(model, 'model', 'a function of the drawn values', 'not-a-function');
  const { fill, normal } = randomNumbers(seed);
  const values = Float64Array.from(inputs, ({ value }) => value);
  const indexed = inputs.map((input, i) => ({ ...input, i })).filter(({ width }) => width > 0);
  const flat = indexed.filter(({ distribution }) => distribution === 'rectangular');
  const bell = indexed.filter(({ distribution }) => distribution === 'normal');
  const flatAt = Uint32Array.from(flat, ({ i }) => i);
  const flatLow = Float64Array.from(flat, ({ value, width }) => value - width);
  const flatWidth = Float64Array.from(flat, ({ width }) => 2 * width);
  const unit = new Float64Array(flat.length);
  // Kept in blocks and in what they add up to: memory for every draw would cost more time than the draws.
  const block = new Float64Array(1024);
  const lowest = lowestValues(1 + Math.round(0.025 * (draws - 1)));
  const highest = lowestValues(draws - Math.round(0.975 * (draws - 1)));
  const moments = { first: Number.NaN, sum: 0, squares: 0, cubes: 0, fourths: 0 };
  let [smallest, largest] = [Infinity, -Infinity];
  for (let start = 0; start < draws; start += block.length) {
    const results = block.subarray(0, draws - start);
    for (let draw = 0; draw < results.length; draw++) {
      fill(unit);
      for (let k = 0; k < unit.length; k++) {
        values[flatAt[k]!] = flatLow[k]! + flatWidth[k]! * unit[k]!;
      }
      for (let k = 0; k < bell.length; k++) {
        const { i, value, width } = bell[k]!;
        values[i] = value + width * normal();
      }
      results[draw] = finiteBetween(model(values), -most, most, 'model(values)');
    }
    addMoments(moments, results);
    for (let i = 0; i < results.length; i++) {
      smallest = Math.min(smallest, results[i]!);
      largest = Math.max(largest, results[i]!);
    }
    lowest.add(results);
    for (let i = 0; i < results.length; i++) results[i] = -results[i]!;
    highest.add(results);
  }
  const { first, sum, squares, cubes, fourths } = moments;
  const mean = sum / draws;
  const [second, third] = [squares / draws, cubes / draws];
  const variance = (Math.max(0, second - mean ** 2) * draws) / (draws - 1);
  const fourth = fourths / draws - 4 * mean * third + 6 * mean ** 2 * second - 3 * mean ** 4;
  const standardDeviation = Math.sqrt(variance);
  const spread = Math.sqrt(Math.max(0, fourth - variance ** 2) / draws);
  return {
    mean: first + mean,
    standardDeviation,
    meanError: standardDeviation / Math.sqrt(draws),
    standardDeviationError: variance > 0 ? spread / (2 * standardDeviation) : 0,
    low: lowest.last(),
    high: -highest.last(),
    smallest,
    largest,
  };
}

interface Moments {
  /** The first result: the others count from it, so that a small scatter is not lost in the powers of its mean. */
  first: number;
  sum: number;
  squares: number;
  cubes: number;
  fourths: number;
}

function addMoments(moments: Moments, results: Float64Array): void {
  if (Number.isNaN(moments.first)) moments.first = results[0]!;
  const { first } = moments;
  let { sum, squares, cubes, fourths } = moments;
  for (let i = 0; i < results.length; i++) {
    const offset = results[i]! - first;
    const square = offset * offset;
    sum += offset;
    squares += square;
    cubes += square * offset;
    fourths += square * square;
  }
  Object.assign(moments, { sum, squares, cubes, fourths });
}
