import { finiteBetween, positive } from '../guard.js';
import type { Hertz, Seconds } from '../units.js';

/** How much of a sine wave an integrating conversion lets through. */
export interface Rejection {
  /** Largest error, as a fraction of the wave's amplitude. */
  readonly passed: number;
  /** Normal-mode rejection, dB; ∞ where nothing passes. */
  readonly decibels: number;
}

/**
 * The normal-mode rejection of a meter that averages over an aperture: |sin(πfT) / (πfT)|. Whole periods of the mains cancel; the 60 dB of
 * data sheets hold for a line frequency that is off by 0.1 %.
 *
 * @param hertz Frequency of the disturbance, 0 to 10⁹ Hz.
 * @param aperture Length of one integration, above 0 s.
 *
 * @example
 * integratorRejection(60, 0.02).decibels.toFixed(2) // => '16.14'
 */
export function integratorRejection(hertz: Hertz, aperture: Seconds): Rejection {
  finiteBetween(hertz, 0, 1e9, 'hertz', 'Hz');
  const cycles = hertz * positive(aperture, 'aperture', 's');
  // sin(πx) by the remainder to the nearest whole number, so that whole cycles cancel exactly.
  const rest = cycles - Math.round(cycles);
  const passed = cycles === 0 ? 1 : Math.abs(Math.sin(Math.PI * rest)) / (Math.PI * cycles);
  return { passed, decibels: passed === 0 ? Number.POSITIVE_INFINITY : -20 * Math.log10(passed) };
}
