import { InputError } from '../errors.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, oneOf, text } from '../guard.js';
import type { CheckOutcome } from '../score/score.js';
import type { UncertainInput } from '../statistics/combineUncertainties.js';
import type { Fraction } from '../units.js';
import { conformance } from './conformance.js';
import { outcomeOf } from './outcomeOf.js';

/** Where a reading inside its limits conforms: everywhere, or only when it is farther inside than its expanded uncertainty. */
export type Acceptance = 'simple' | 'guarded';

/** A measured value, its limits, and what makes it uncertain. */
export interface ReadingInLimits<Source extends string = string> {
  /** What was measured, in the unit of the limits; any finite number. */
  readonly measured: number;
  /** The lowest value that is right, a finite number in the unit of `measured`; none when left out. */
  readonly low?: number;
  /** The highest value that is right, a finite number in that unit, not below `low`; none when left out. */
  readonly high?: number;
  /** What makes it uncertain: how the measured value, or its limits, answer to each, and the standard uncertainty of each. */
  readonly inputs: readonly UncertainInput<Source>[];
}

/** What a reading says beside its limits. */
export interface JudgedReading<Source extends string = string> {
  /** What came of it. */
  readonly outcome: CheckOutcome;
  /** Its standard uncertainty, in the unit of the limits, 0 or more. */
  readonly uncertainty: number;
  /** Distance to the nearer limit, in the unit of the limits, negative outside. */
  readonly margin: number;
  /** Probability, 0 to 1, that the true value lies within the limits. */
  readonly conformance: Fraction;
  /** What adds most to the uncertainty; left out where nothing is uncertain. */
  readonly mostUncertain?: Source;
}

const most = 1e30;
const number = between(-most, most);
const rules: FieldRules = {
  measured: number,
  'low?': number,
  'high?': number,
  inputs: listOf({ name: text, sensitivity: number, uncertainty: between(0, most) }),
};

/**
 * Compares a reading with its limits.
 *
 * It fails when it lies outside by more than 3 u, its standard uncertainty: of a sound sensor, wherever it lies within its limits, that happens once in 700
 * readings. It conforms when it lies inside; between a limit and 3 u beyond it is marginal. Limits that are not at least four times U = 2 u apart can't be told from the uncertainty: inside them only what is farther from both than U
 * conforms, and nothing is marginal; the rest can't be told, and what adds most to the uncertainty is to be made better.
 *
 * A single limit counts as wide as it is far from 0.
 *
 * Method: u by the law of propagation (JCGM 100:2008, equation 10), decision rules of JCGM 106:2012, 8 (from memory); a tolerance of at
 * least twice U is common practice, no source.
 *
 * @param acceptance `guarded`: it conforms only when it is farther inside than U; `simple` when left out.
 * @throws InputError at `reading…` for what is no finite number, `out-of-order` for a low limit above the high one.
 *
 * @example
 * const judged = judgeReading({
 *   measured: 2510,
 *   low: 2100,
 *   high: 2900,
 *   inputs: [
 *     { name: 'meter', sensitivity: 1, uncertainty: 15 },
 *     { name: 'thermometer', sensitivity: -106, uncertainty: 0.5 },
 *   ],
 * });
 * judged.outcome // => 'conforms'
 * judged.uncertainty // => ≈ 55.08
 * judged.mostUncertain // => 'thermometer'
 */
export function judgeReading<Source extends string>(
  reading: ReadingInLimits<Source>,
  acceptance: Acceptance = 'simple',
): JudgedReading<Source> {
  checkFields(reading, 'reading', rules);
  oneOf(acceptance, ['simple', 'guarded'], 'acceptance');
  const { low = -Infinity, high = Infinity } = reading;
  if (low > high) {
    throw new InputError(
      'out-of-order',
      'reading.low',
      `reading.low is ${low}, above reading.high, ${high}; it must not be.`,
    );
  }
  return compareReading(reading, acceptance);
}

/** A reading fails beyond so many standard uncertainties: 0.13 % of a normal distribution lie farther on one side. */
const rejection = 3;

/** {@link judgeReading} of what was checked already. */
export function compareReading<Source extends string>(
  { measured, low = -Infinity, high = Infinity, inputs }: ReadingInLimits<Source>,
  acceptance: Acceptance = 'simple',
): JudgedReading<Source> {
  const parts = inputs.map(({ sensitivity, uncertainty }) => Math.abs(sensitivity * uncertainty));
  const uncertainty = Math.hypot(...parts);
  const margin = Math.min(measured - low, high - measured);
  const expanded = 2 * uncertainty;
  // Of a single limit its distance from 0 tells how fine a meter must be.
  const both = high - low;
  const width = both < Infinity ? both : Math.abs(low > -Infinity ? low : high);
  const isFine = width >= 4 * expanded;
  const guard = isFine && acceptance === 'simple' ? 0 : expanded;
  const outcome = outcomeOf(margin, width, expanded, rejection * uncertainty, guard);
  return {
    outcome,
    uncertainty,
    margin,
    conformance:
      uncertainty > 0 ? conformance(measured, uncertainty, low, high) : margin < 0 ? 0 : 1,
    ...(uncertainty > 0 && {
      mostUncertain: inputs[parts.indexOf(Math.max(...parts))]!.name,
    }),
  };
}
