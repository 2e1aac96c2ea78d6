import { resistance } from '../guard.js';
import type { Ohms } from '../units.js';

/**
 * Two resistances in parallel, Ω; the second alone where there is no first.
 *
 * @param one 0 to ∞; undefined and ∞ are no connection.
 * @param other 0 to ∞.
 *
 * @example
 * inParallel(10e3, 40e3) // => 8000
 * inParallel(undefined, 40e3) // => 40000
 */
export function inParallel(one: Ohms | undefined, other: Ohms): Ohms {
  resistance(other, 'other');
  if (one === undefined) return other;
  resistance(one, 'one');
  if (one === Infinity) return other;
  if (other === Infinity) return one;
  return one === 0 ? 0 : (one * other) / (one + other);
}
