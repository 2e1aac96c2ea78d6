import { normalProbability } from '../statistics/normalDistribution.js';

/** The probability that a value lies between two limits, its error normal with a standard uncertainty above 0. */
export const conformance = (
  measured: number,
  uncertainty: number,
  low: number,
  high: number,
): number =>
  normalProbability((high - measured) / uncertainty) -
  normalProbability((low - measured) / uncertainty);
