import { finiteBetween, oneOf } from '../guard.js';
import type { Ohms } from '../units.js';
import { type PreferredSeries, preferredValues } from './preferredValues.js';

/** Which of a resistance's two neighbours in a series is taken. */
export type PreferredRounding = 'up' | 'down' | 'nearest';

export const roundings = ['up', 'down', 'nearest'] as const;

/** A value this near to one of the series, as a ratio, is that one: floating-point noise, not a wish. */
const noise = 1e-9;

/**
 * The preferred value next to a wanted resistance.
 *
 * A resistance that is in the series already stays what it is, whichever way is rounded. The nearest is the
 * one with the smallest difference, which is also the smallest percentage of the wanted value (common
 * practice, no source); halfway between two it is the higher one.
 *
 * @param ohms Wanted resistance, 1e-12 to 1e18 Ω.
 * @param series The series, from `E3` to `E192` (IEC 60063).
 * @param rounding `up`: not below the wanted; `down`: not above it; `nearest`.
 * @returns The preferred resistance in Ω, the number that its decimal figures spell.
 * @throws InputError at `ohms`, `series` or `rounding`.
 *
 * @example
 * preferredValue(1040, 'E24', 'up') // => 1100
 * preferredValue(1040, 'E24', 'nearest') // => 1000
 */
export function preferredValue(
  ohms: Ohms,
  series: PreferredSeries,
  rounding: PreferredRounding,
): Ohms {
  finiteBetween(ohms, 1e-12, 1e18, 'ohms', 'Ω');
  const decade = preferredValues(series);
  oneOf(rounding, roundings, 'rounding');
  const power = Math.floor(Math.log10(ohms)) - 2;
  const near = [power - 1, power, power + 1].flatMap((p) =>
    decade.map((figures) => Number(`${figures}e${p}`)),
  );
  const below = near.findLast((value) => value <= ohms * (1 + noise))!;
  const above = near.find((value) => value >= ohms * (1 - noise))!;
  if (rounding === 'nearest') return ohms - below < above - ohms ? below : above;
  return rounding === 'up' ? above : below;
}
