import { type FieldRules, listOf } from '../fields.js';
import { between, oneOf, text } from '../guard.js';
import type { CheckOutcome } from '../score/score.js';
import { type CodedSensor, type CodeKind, codeOf } from './codeTable.js';

/** What is looked at of a check: what came of it, and where it lies beside its limits. */
export interface CodedCheck {
  /** Which comparison it is. */
  readonly check: string;
  /** What came of it. */
  readonly outcome: CheckOutcome;
  /** What was measured, a number in the unit of the limits, any; left out where nothing was. */
  readonly measured?: number;
  /** The lowest value that is right, a number in that unit, any; left out where there is none. */
  readonly lowLimit?: number;
}

/** A code that a failing sensor could set, with the sensor that it would be of. */
export interface SettableCode {
  /** The code, a letter and four digits. */
  readonly code: string;
  /** The sensor whose circuit it is about. */
  readonly sensor: CodedSensor;
  /** What a control unit would notice. */
  readonly kind: CodeKind;
}

const any = () => {};
/** A whole check of a judgement is taken; what is looked at must be right. */
const checkRule: FieldRules = {
  check: text,
  outcome: ['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'],
  'measured?': between(-1e30, 1e30),
  'lowLimit?': between(-1e30, 1e30),
  'highLimit?': any,
  'reading?': any,
  'unit?': any,
  'uncertainty?': any,
  'margin?': any,
  'conformance?': any,
  'mostUncertain?': any,
};

const sensors: Readonly<Record<'thermistor' | 'pressure', readonly CodedSensor[]>> = {
  thermistor: ['coolant-temperature', 'air-temperature'],
  pressure: ['manifold-pressure'],
};

/**
 * The standard trouble codes that a sensor with such failing checks could set: a signal too low or too high, or of a gain that does not fit, out of range.
 * Whether it is a coolant's or an air sensor isn't told, so that a thermistor has a code of each.
 *
 * Source: as of {@link readTroubleCode}. Which fault sets which is common practice, no source.
 *
 * @param kind The kind of the sensor.
 * @param checks The checks of its judgement.
 * @returns None where nothing fails.
 * @throws InputError at `kind` or `checks…`.
 *
 * @example
 * const failing = { check: 'resistance', outcome: 'fails', measured: 5, lowLimit: 2300 } as const;
 * codesOfReadings('thermistor', [failing]).map(({ code }) => code) // => ['P0117', 'P0112']
 */
export function codesOfReadings(
  kind: 'thermistor' | 'pressure',
  checks: readonly CodedCheck[],
): readonly SettableCode[] {
  oneOf(kind, ['thermistor', 'pressure'], 'kind');
  listOf(checkRule)(checks, 'checks');
  const kinds = checks
    .filter(({ outcome }) => outcome === 'fails')
    .map(({ check, measured = 0, lowLimit = -Infinity }): CodeKind => {
      if (check === 'gain') return 'range';
      return measured < lowLimit ? 'low' : 'high';
    });
  return [...new Set(kinds)].flatMap((one) =>
    sensors[kind].map((sensor) => ({ code: codeOf(sensor, one), sensor, kind: one })),
  );
}
