import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between, finiteBetween, wholeBetween, wholeNumber } from '../guard.js';
import type { Fraction, Seconds } from '../units.js';

/** Regular readings: each averages the signal over its aperture, one begins every interval. */
export interface Readings {
  /** From the beginning of one reading to that of the next, s, above 0. */
  readonly interval: Seconds;
  /** How long a reading averages, s, 0 or more; 0 for a reading that takes no time. */
  readonly aperture: Seconds;
  /** How much of the aperture an event must fill for the reading to show it, 0 to 1. */
  readonly share: Fraction;
  /** How many readings in a row must show it, a whole number, 1 or more; 1 when left out. */
  readonly inARow?: number;
}

/**
 * The probability that an event of a length leaves its mark in a reading, its phase against the readings being as likely as any other.
 *
 * An event overlaps an aperture a by at least the share θ for (a + L − 2θa) of its positions, if it is long enough at all (L ≥ θa);
 * per interval T that is the chance, at most 1. For m readings in a row it must last (m − 1)T longer, and reach θ in the first and the last.
 *
 * @param length Of the event, 0 s or more.
 * @throws InputError `impossible-setting` for an aperture longer than the interval, and for numbers out of range.
 *
 * @example
 * chanceOfReading(0.02, { interval: 0.4, aperture: 0.1, share: 0.1 }) // => ≈ 0.25
 */
export function chanceOfReading(length: Seconds, readings: Readings): Fraction {
  finiteBetween(length, 0, 1e12, 'length', 's');
  const { interval, aperture, share, inARow } = checked(readings);
  const inside = length - (inARow - 1) * interval;
  if (length === 0 || (inARow === 1 && length < share * aperture)) return 0;
  return Math.min(1, Math.max(0, (aperture + inside - 2 * share * aperture) / interval));
}

/**
 * The probability that at least one of several passes shows it, each with a phase of its own.
 *
 * @example
 * chanceInPasses(0.5, 3) // => 0.875
 */
export function chanceInPasses(chance: Fraction, passes: number): Fraction {
  finiteBetween(chance, 0, 1, 'chance');
  return -Math.expm1(wholeNumber(passes, 1, 1e6, 'passes') * Math.log1p(-chance));
}

/**
 * The shortest event that is shown with a probability, over so many passes.
 *
 * @param wanted Above 0, up to 1.
 *
 * @example
 * shortestShown({ interval: 0.4, aperture: 0, share: 1 }, 0.95, 1) // => ≈ 0.38
 */
export function shortestShown(readings: Readings, wanted: Fraction, passes: number): Seconds {
  finiteBetween(wanted, 0, 1, 'wanted');
  wholeNumber(passes, 1, 1e6, 'passes');
  const { interval, aperture, share, inARow } = checked(readings);
  const each = wanted === 1 ? 1 : -Math.expm1(Math.log1p(-wanted) / passes);
  const length = each * interval - aperture + 2 * share * aperture + (inARow - 1) * interval;
  return Math.max(length, inARow === 1 ? share * aperture : 0, 0);
}

const readingsRules: FieldRules = {
  interval: above0('s'),
  aperture: between(0, 1e12, 's'),
  share: between(0, 1),
  'inARow?': wholeBetween(1, 1e9),
};

function checked(readings: Readings) {
  checkFields(readings, 'readings', readingsRules);
  const { interval, aperture, share, inARow = 1 } = readings;
  if (aperture <= interval) return { interval, aperture, share, inARow };
  throw new InputError(
    'impossible-setting',
    'readings.aperture',
    `readings.aperture is ${aperture} s, longer than readings.interval of ${interval} s; a reading must be over before the next begins.`,
  );
}
