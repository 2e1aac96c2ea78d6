import { wholeNumber } from '../guard.js';
import type { Fraction } from '../units.js';

const most = 1e6;

/**
 * The probability that further passes all miss a spot that earlier passes showed or missed, though it is as it was.
 *
 * Method: beta-binomial prediction from a uniform prior for the chance that a pass shows the spot, of which Laplace's
 * rule of succession is the case of one further pass (P.-S. Laplace, 1774; from memory).
 *
 * @param seen How many of the earlier passes showed it, 0 to `passes`.
 * @param passes How many earlier passes went over it.
 * @param further How many passes go over it afterwards.
 * @throws InputError where one is no whole number of its range.
 *
 * @example
 * chanceAllMissed(2, 2, 1) // => 0.25
 */
export function chanceAllMissed(seen: number, passes: number, further: number): Fraction {
  wholeNumber(passes, 0, most, 'passes');
  wholeNumber(seen, 0, passes, 'seen');
  wholeNumber(further, 0, most, 'further');
  let chance = 1;
  for (let pass = 1; pass <= further; pass++) {
    chance *= (passes - seen + pass) / (passes + 1 + pass);
  }
  return chance;
}
