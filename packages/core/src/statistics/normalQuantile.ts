import { finiteBetween } from '../guard.js';
import { upperQuantile } from './normalDistribution.js';

/**
 * The value that a standard normal variable exceeds with a probability: Φ⁻¹(1 − p).
 *
 * Method: Newton's iteration on the logarithm of the tail, which is a series or a continued fraction (M. Abramowitz and I. A. Stegun,
 * Handbook of Mathematical Functions, 7.1.5 and 7.1.14; from memory).
 *
 * @param probability 10⁻³⁰⁰ to 0.4999.
 * @returns Standard deviations, above 0.
 * @throws InputError at `probability`.
 *
 * @example
 * normalQuantile(0.025) // => ≈ 1.959964
 */
export function normalQuantile(probability: number): number {
  return upperQuantile(finiteBetween(probability, 1e-300, 0.4999, 'probability'));
}
