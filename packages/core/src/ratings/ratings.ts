import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between, text } from '../guard.js';
import type { Amps, Celsius, Watts } from '../units.js';

/** A power rating that falls in a straight line above a temperature. */
export interface PowerRating {
  /** Continuous, W, above 0. */
  readonly watts: Watts;
  /** What it stands for a moment, W, above 0; not known when left out. */
  readonly shortTerm?: Watts;
  /** Full power up to here, °C, from −273.15; the rating holds at any temperature when left out. */
  readonly fullTo?: Celsius;
  /** No power from here on, °C, above `fullTo`; needed with it, and only with it. */
  readonly zeroAt?: Celsius;
}

/** A current rating. */
export interface CurrentRating {
  /** Continuous, A, above 0. */
  readonly amps: Amps;
  /** What it stands for a moment, A, above 0; not known when left out. */
  readonly shortTerm?: Amps;
}

/** What the parts may bear. A rating left out is not given, and never assumed. */
export interface Ratings {
  /** Of the whole track, evenly loaded; not given when left out. */
  readonly track?: PowerRating;
  /** Of the wiper's contact; not given when left out. */
  readonly wiper?: CurrentRating;
  /** Of the limiting resistor; not given when left out. */
  readonly limiter?: PowerRating;
  /** Of the source; not given when left out. */
  readonly source?: CurrentRating;
  /** Temperature around the parts, °C, from −273.15 to 10⁴; needed where a rating falls with it, without effect elsewhere. */
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
