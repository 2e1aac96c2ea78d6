import { finiteBetween } from '../guard.js';
import type { Pascals } from '../units.js';

/**
 * What a scan tool shows of a manifold's or the air's pressure (PIDs 0B and 33): the byte A stands for A kPa absolute, in steps of 1 kPa, up to 255 kPa.
 *
 * Method: ISO 15031-5 and SAE J1979 as quoted publicly.
 *
 * @param pressure Absolute pressure, Pa, 0 to 10⁹.
 * @returns The byte, and the pressure that is shown, Pa.
 * @throws InputError at `pressure`.
 *
 * @example
 * shownPressure(101325) // => { count: 101, pascals: 101000 }
 */
export function shownPressure(pressure: Pascals): {
  /** The byte, a whole number from 0 to 255. */
  readonly count: number;
  /** The pressure that is shown, Pa, absolute. */
  readonly pascals: Pascals;
} {
  finiteBetween(pressure, 0, 1e9, 'pressure', 'Pa');
  const count = Math.min(255, Math.round(pressure / 1000));
  return { count, pascals: 1000 * count };
}
