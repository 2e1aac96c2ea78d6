import type { Fraction } from '../units.js';

/** To hundredths of a percent: engines differ in the last digits of a logarithm. */
export function roundedOdds(chance: Fraction): Fraction {
  return Math.round(1e4 * chance) / 1e4;
}
