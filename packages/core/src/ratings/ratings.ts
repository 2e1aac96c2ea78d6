import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between, text } from '../guard.js';
import type { Amps, Celsius, Watts } from '../units.js';

/** A power rating that falls in a straight line above a temperature. */
export interface PowerRating {
  /** W, continuous. */
  readonly watts: Watts;
  /** W that it stands for a moment; not known when left out. */
  readonly shortTerm?: Watts;
  /** Full power up to here, °C; the rating holds at any temperature when left out. */
  readonly fullTo?: Celsius;
  /** No power from here on, °C. */
  readonly zeroAt?: Celsius;
}

/** A current rating. */
export interface CurrentRating {
  /** A, continuous. */
  readonly amps: Amps;
  /** A that it stands for a moment; not known when left out. */
  readonly shortTerm?: Amps;
}

/** What the parts may bear. A rating left out is not given, and never assumed. */
export interface Ratings {
  /** Of the whole track, evenly loaded. */
  readonly track?: PowerRating;
  /** Of the wiper's contact. */
  readonly wiper?: CurrentRating;
  readonly limiter?: PowerRating;
  /** Of the source. */
  readonly source?: CurrentRating;
  /** Temperature around the parts, °C; needed where a rating falls with it. */
  readonly ambient?: Celsius;
}

export const celsius = between(-273.15, 1e4, '°C');

export const powerRules: FieldRules = {
  watts: above0('W'),
  'shortTerm?': above0('W'),
  'fullTo?': celsius,
  'zeroAt?': celsius,
};
export const currentRules: FieldRules = { amps: above0('A'), 'shortTerm?': above0('A') };

/**
 * The power that a part may bear at a temperature.
 *
 * Method: full up to one temperature, then a straight line to 0 at another, as resistor data sheets draw it.
 *
 * @param rating Its `fullTo` and `zeroAt` belong together.
 * @param ambient °C; needed where the rating falls with temperature.
 * @throws InputError for a rating of 0 or less, temperatures out of order, or a missing `ambient`.
 *
 * @example
 * derated({ watts: 1, fullTo: 40, zeroAt: 135 }, 87.5) // => 0.5
 */
export function derated(rating: PowerRating, ambient?: Celsius, path = 'rating'): Watts {
  checkFields(rating, text(path, 'path'), powerRules);
  return rating.watts * deratingFactor(rating, ambient, path);
}

/** The fraction of its full power that a part may bear at a temperature. */
export function deratingFactor(
  rating: PowerRating,
  ambient: Celsius | undefined,
  path: string,
): number {
  const { fullTo, zeroAt } = rating;
  if (fullTo === undefined && zeroAt === undefined) return 1;
  celsius(fullTo, `${path}.fullTo`);
  celsius(zeroAt, `${path}.zeroAt`);
  if (!(zeroAt! > fullTo!)) {
    throw new InputError(
      'out-of-order',
      `${path}.zeroAt`,
      `${path}.zeroAt is ${zeroAt} °C; it must be above fullTo, ${fullTo} °C.`,
    );
  }
  celsius(ambient, 'ratings.ambient');
  return Math.min(1, Math.max(0, (zeroAt! - ambient!) / (zeroAt! - fullTo!)));
}
