import { positive } from '../guard.js';
import type { Kelvins, Seconds } from '../units.js';

/**
 * How long a sensor must lie in its bath before it is as near to it as asked.
 *
 * Method: it comes nearer exponentially: τ·ln(step/within). After one time constant 63.2 % of the way is done.
 *
 * @param timeConstant τ in this medium, s, above 0.
 * @param step How far the bath is from where the sensor comes from, K, above 0.
 * @param within How near is near enough, K, above 0.
 * @returns s; 0 where it is near enough already.
 * @throws InputError at the argument that is wrong.
 *
 * @example
 * timeInBath(25, 80, 0.1) // => ≈ 167.1
 */
export function timeInBath(timeConstant: Seconds, step: Kelvins, within: Kelvins): Seconds {
  positive(timeConstant, 'timeConstant', 's');
  positive(step, 'step', 'K');
  positive(within, 'within', 'K');
  return timeConstant * Math.max(0, Math.log(step / within));
}
