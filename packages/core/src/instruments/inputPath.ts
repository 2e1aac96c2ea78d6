import { finiteBetween, positive, wholeNumber } from '../guard.js';
import type { Farads, Hertz, Ohms, Seconds } from '../units.js';

/**
 * The corner frequency of a source's resistance with the capacitance of cable and input, 1/(2πRC), Hz.
 *
 * @param ohms What the capacitance sees: the source's resistance in parallel with the input's.
 *
 * @example
 * inputCorner(500e3, 150e-12).toFixed(0) // => '2122'
 */
export function inputCorner(ohms: Ohms, farads: Farads): Hertz {
  return 1 / (2 * Math.PI * positive(ohms, 'ohms', 'Ω') * positive(farads, 'farads', 'F'));
}

/**
 * Rise time from 10 % to 90 % of a single pole, ln 9/(2πB), s: the rule 0.35/B.
 *
 * @param bandwidth The corner, Hz.
 *
 * @example
 * riseTime(20e6).toExponential(3) // => '1.748e-8'
 */
export function riseTime(bandwidth: Hertz): Seconds {
  return Math.log(9) / (2 * Math.PI * positive(bandwidth, 'bandwidth', 'Hz'));
}

/**
 * How long a sampling capacitor takes from empty to within half a step of the final value through a resistance: RC·ln 2^(N+1), s.
 *
 * @param ohms Source, series and switch resistance together.
 * @param farads The sampling capacitor.
 * @param bits 1 to 32.
 *
 * @example
 * settlingTime(10e3, 14e-12, 10).toExponential(3) // => '1.067e-6'
 */
export function settlingTime(ohms: Ohms, farads: Farads, bits: number): Seconds {
  finiteBetween(ohms, 0, 1e18, 'ohms', 'Ω');
  return ohms * positive(farads, 'farads', 'F') * (wholeNumber(bits, 1, 32, 'bits') + 1) * Math.LN2;
}
