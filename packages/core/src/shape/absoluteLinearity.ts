import { checkFields, type FieldRules } from '../fields.js';
import { between, refuse } from '../guard.js';
import type { Fraction } from '../units.js';
import { checkReadings } from './checkReadings.js';
import { largestFromLine } from './largestFromLine.js';
import { type Linearity, type NotJudged, notJudged, type ShaftReadingsLike } from './shape.js';

/** What arithmetic may leave of a place that stands at an end of the travel, as a ratio. */
const rounding = 1e-9;

/** The line that a sensor was designed to follow, as far as it is known. */
export interface TheoreticalLine {
  /** The index point: the ratio wanted (0 to 1) at one place of the shaft (in its own unit, −10¹² to 10¹²); not known when left out. */
  readonly index?: { readonly shaft: number; readonly ratio: Fraction };
  /**
   * Theoretical electrical travel: how far the shaft turns while the ratio goes from 0 to 1, in the unit of the shaft's place, from −10¹²
   * to 10¹² but 0; negative where the ratio falls as that grows. Not known when left out.
   */
  readonly electricalTravel?: number;
}

/** The rules of a theoretical line, with those of what is known beside it. */
export const theoryRules = (more: FieldRules = {}): FieldRules => ({
  'index?': { shaft: between(-1e12, 1e12), ratio: between(0, 1) },
  'electricalTravel?': (value, path) => {
    const turn = between(-1e12, 1e12)(value, path);
    const wanted = 'how far the shaft turns from ratio 0 to ratio 1, 1e-12 or more';
    if (Math.abs(turn) < 1e-12) refuse(value, path, wanted, turn === 0 ? 'zero' : 'out-of-range');
  },
  ...more,
});

/**
 * Absolute linearity: the largest deviation from the line fixed by the index point and the theoretical electrical
 * travel, judged over that travel; what was read beyond it is left out.
 *
 * Its uncertainty is that of one reading: the index point counts as exact.
 *
 * Source of the term: State Electronics, glossary of potentiometer terms, with its end ratios of 0 and 1.
 *
 * @param given As for {@link independentLinearity}.
 * @param theory Index point and theoretical electrical travel; both are needed.
 * @returns Not judged where one of the two is missing, or where nothing was read over the theoretical travel.
 * @throws InputError for columns of different lengths, a value that is no number or an electrical travel of 0.
 *
 * @example
 * const readings = { shaft: Float64Array.of(0, 45, 90), ratio: Float64Array.of(0.11, 0.52, 0.9) };
 * const theory = { index: { shaft: 45, ratio: 0.5 }, electricalTravel: 112.5 };
 * absoluteLinearity(readings, theory).value.toFixed(6) // => '0.020000'
 * absoluteLinearity(readings, {}) // => { kind: 'not-judged', reason: 'no-index-point' }
 */
export function absoluteLinearity(
  given: ShaftReadingsLike,
  theory: TheoreticalLine,
): Linearity | NotJudged {
  const readings = checkReadings(given);
  checkFields(theory, 'theory', theoryRules());
  const { index, electricalTravel } = theory;
  if (!index) return notJudged('no-index-point');
  if (electricalTravel === undefined) return notJudged('no-electrical-travel');
  const slope = 1 / electricalTravel;
  const line = { intercept: index.ratio - slope * index.shaft, slope };
  const isOnTravel = (shaft: number): boolean => {
    const wanted = index.ratio + slope * (shaft - index.shaft);
    return wanted >= -rounding && wanted <= 1 + rounding;
  };
  const largest = largestFromLine(readings, line, isOnTravel);
  if (!largest) return notJudged('no-readings');
  const { uncertainty } = readings;
  return {
    kind: 'judged',
    value: largest.value,
    at: readings.shaft[largest.index]!,
    line,
    ...(uncertainty !== undefined && { uncertainty }),
  };
}
