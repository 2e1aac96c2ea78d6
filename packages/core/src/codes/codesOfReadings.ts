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
  /** The highest value that is right, a number in that unit, any; left out where there is none. */
  readonly highLimit?: number;
  /** Of what it is a number: 'Ω', 'V' or '1', a part of the supply; any other sets no code of the circuit. */
  readonly unit?: string;
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

/** So near to an end of the supply a control unit takes a signal for a short or a break, as a part of the supply. */
const nearEnd = 0.05;
/** What control units feed such sensors with, V: common practice, no source. */
const usualSupply = 5;

const any = () => {};
/** A whole check of a judgement is taken; what is looked at must be right. */
const checkRule: FieldRules = {
  check: text,
  outcome: ['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'],
  'measured?': between(-1e30, 1e30),
  'lowLimit?': between(-1e30, 1e30),
  'highLimit?': between(-1e30, 1e30),
  'unit?': text,
  'reading?': any,
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
 * The standard trouble codes that a sensor with such failing checks could set: a signal too low or too high where it reads as near a short or a break does, else one that is
 * out of range. Whether it is a coolant's or an air sensor isn't told, so that a thermistor has a code of each.
 *
 * Source: as of {@link readTroubleCode}. A published service manual has P0117 set below 0.2 V and P0118 above 4.9 V: within about 5 % of 0 V or of 5 V. Ohms below a tenth of the lowest that is
 * right, or beyond ten times the highest, are taken for such (common practice, no source); volts are taken on 5 V.
 *
 * @param kind The kind of the sensor.
 * @param checks The checks of its judgement.
 * @returns None where nothing fails.
 * @throws InputError at `kind` or `checks…`.
 *
 * @example
 * const failing = { check: 'resistance', outcome: 'fails', measured: 5, lowLimit: 2300, unit: 'Ω' } as const;
 * codesOfReadings('thermistor', [failing]).map(({ code }) => code) // => ['P0117', 'P0112']
 */
export function codesOfReadings(
  kind: 'thermistor' | 'pressure',
  checks: readonly CodedCheck[],
): readonly SettableCode[] {
  oneOf(kind, ['thermistor', 'pressure'], 'kind');
  listOf(checkRule)(checks, 'checks');
  const kinds = checks.filter(({ outcome }) => outcome === 'fails').map(kindOf);
  return [...new Set(kinds)].flatMap((one) =>
    sensors[kind].map((sensor) => ({ code: codeOf(sensor, one), sensor, kind: one })),
  );
}

/** What a control unit would notice of a failing check. */
function kindOf(failing: CodedCheck): CodeKind {
  const { check, unit = '', measured = 0, lowLimit = 0, highLimit = Infinity } = failing;
  const ends: Readonly<Record<string, readonly [low: number, high: number]>> = {
    Ω: [lowLimit / 10, highLimit * 10],
    V: [nearEnd * usualSupply, (1 - nearEnd) * usualSupply],
    1: [nearEnd, 1 - nearEnd],
  };
  const [low, high] = (check !== 'gain' && ends[unit]) || [-Infinity, Infinity];
  return measured < low ? 'low' : measured > high ? 'high' : 'range';
}
