import { checkFields, type FieldRules } from '../fields.js';
import { between, resistance } from '../guard.js';
import type { Fraction, Ohms } from '../units.js';

/** From a wiper to both ends, read without moving the shaft between. */
export interface WiperReadings {
  /** From the wiper to one end, Ω, 0 or more; Infinity where nothing connects. */
  readonly oneToWiper: Ohms;
  /** From the wiper to the other end, Ω, 0 or more; Infinity where nothing connects. */
  readonly otherToWiper: Ohms;
}

/** What an ohmmeter shows of three terminals, taken for two ends and a wiper; nothing is fed. */
export interface TerminalReadings extends WiperReadings {
  /** End to end, Ω, 0 or more; Infinity where nothing connects. */
  readonly endToEnd: Ohms;
  /** End to end with the meter's leads changed over, Ω, 0 or more. */
  readonly endToEndReversed: Ohms;
  /** The same to the wiper with the shaft elsewhere; left out where it can't be moved. */
  readonly moved?: WiperReadings;
  /** Standard uncertainty of each reading as a fraction of it, 0 to 0.3; 0.01 when left out (common practice, no source). */
  readonly uncertainty?: Fraction;
}

/** Why terminals are taken for a potentiometer, for none, or for neither. */
export type PotentiometerReason =
  /** End to end reads differently with the leads changed over: something active is between. */
  | 'depends-on-polarity'
  /** The two parts are together less than end to end, or further apart: the wiper is not between the ends. */
  | 'does-not-split'
  /** Nothing connects end to end: a broken track, or no track at all. */
  | 'ends-open'
  /** Nothing connects to the wiper. */
  | 'wiper-open'
  /** More resistance lies in series with the wiper than the whole track has. */
  | 'wiper-far-from-track'
  /** The shaft was moved, and neither part followed. */
  | 'does-not-follow'
  /** The two parts and what lies in series with the wiper make up end to end. */
  | 'splits'
  /** One part grew by what the other lost. */
  | 'follows';

/** What three terminals are. */
export interface PotentiometerFinding {
  /** A potentiometer, surely none, or neither is told by these readings. */
  readonly conclusion: 'potentiometer' | 'not-one' | 'cannot-tell';
  /** Why, as codes; 1 or more. */
  readonly reasons: readonly PotentiometerReason[];
}

const wiperRules: FieldRules = { oneToWiper: resistance, otherToWiper: resistance };
const rules: FieldRules = {
  ...wiperRules,
  endToEnd: resistance,
  endToEndReversed: resistance,
  'moved?': wiperRules,
  'uncertainty?': between(0, 0.3),
};

/**
 * Whether three terminals are a potentiometer's, by an ohmmeter. A Hall or inductive sensor has an active part in its place: ohms between its pins mean nothing, and
 * what is worked out for a potentiometer must not be applied to it.
 *
 * Of a potentiometer end to end reads the same both ways round, and the wiper lies between the ends: one part and the other make up the whole, with twice what lies in series with
 * the wiper, and differ by no more than the whole. Ends that are open both ways round, a wiper that is open to both, or one that doesn't
 * follow may be a broken potentiometer's: that can't be told. What is open one way round only, or to one end only, is none.
 *
 * Method: differences beyond three standard uncertainties, which combine as independent ones. How a contactless sensor is recognised: common practice, no source.
 *
 * @param readings By one meter, in one range where it can be: ranges drive active parts differently.
 * @throws InputError at `readings…`.
 *
 * @example
 * const sound = { endToEnd: 5000, endToEndReversed: 5000, oneToWiper: 900, otherToWiper: 4200 };
 * recognisePotentiometer(sound) // => { conclusion: 'potentiometer', reasons: ['splits'] }
 * recognisePotentiometer({ ...sound, endToEndReversed: 8100 }).conclusion // => 'not-one'
 */
export function recognisePotentiometer(readings: TerminalReadings): PotentiometerFinding {
  checkFields(readings, 'readings', rules);
  const {
    endToEnd,
    endToEndReversed,
    oneToWiper,
    otherToWiper,
    moved,
    uncertainty = 0.01,
  } = readings;
  const differ = (difference: number, ...of: readonly number[]) =>
    difference > 3 * uncertainty * Math.hypot(...of) + 1e-9 * Math.max(...of);
  // Of two that are open the difference is no number, and no difference.
  const difference = Math.abs(endToEnd - endToEndReversed);
  if (differ(difference, ...finite(endToEnd, endToEndReversed)))
    return { conclusion: 'not-one', reasons: ['depends-on-polarity'] };
  if (endToEnd === Infinity) return { conclusion: 'cannot-tell', reasons: ['ends-open'] };
  const sets = [{ oneToWiper, otherToWiper }, ...(moved ? [moved] : [])];
  if (sets.some((set) => set.oneToWiper === Infinity && set.otherToWiper === Infinity))
    return { conclusion: 'cannot-tell', reasons: ['wiper-open'] };
  const isBetween = sets.every(
    ({ oneToWiper: one, otherToWiper: other }) =>
      one + other < Infinity &&
      !differ(endToEnd - one - other, endToEnd, one, other) &&
      !differ(Math.abs(one - other) - endToEnd, endToEnd, one, other),
  );
  if (!isBetween) return { conclusion: 'not-one', reasons: ['does-not-split'] };
  if (differ(oneToWiper + otherToWiper - 3 * endToEnd, 3 * endToEnd, oneToWiper, otherToWiper))
    return { conclusion: 'cannot-tell', reasons: ['wiper-far-from-track'] };
  if (!moved) return { conclusion: 'potentiometer', reasons: ['splits'] };
  const grown = moved.oneToWiper - oneToWiper;
  const lost = otherToWiper - moved.otherToWiper;
  const all = [oneToWiper, otherToWiper, moved.oneToWiper, moved.otherToWiper];
  if (
    !differ(Math.abs(grown), oneToWiper, moved.oneToWiper) &&
    !differ(Math.abs(lost), otherToWiper, moved.otherToWiper)
  )
    return { conclusion: 'cannot-tell', reasons: ['splits', 'does-not-follow'] };
  return differ(-grown * lost, ...all)
    ? { conclusion: 'not-one', reasons: ['does-not-split'] }
    : { conclusion: 'potentiometer', reasons: ['splits', 'follows'] };
}

/** Those that are finite: an open reading beside one that isn't differs whatever the uncertainty. */
const finite = (...of: readonly number[]) => of.filter((ohms) => ohms < Infinity);
