import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Celsius, Fraction, Kelvins, Ohms } from '../units.js';
import { checkLaw, rangeOf, withinLaw, zero } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms } from './lnOhms.js';

/** How far a sound thermistor may be off its law, each part either way; all add up. A table that has limits takes none. */
export interface ThermistorTolerances {
  /** Of the resistance at the temperature `at`, a fraction of itself, 0 to 0.99; 0 when left out. */
  readonly ohms?: Fraction;
  /** Of B, a fraction of itself, 0 to 0.99; 0 when left out. */
  readonly b?: Fraction;
  /** Of the temperature, K, 0 to 100; 0 when left out. */
  readonly kelvins?: Kelvins;
  /** The temperature that the resistance is given at, °C, within the range of the law; the first one of a B law, else 25 °C, when left out. */
  readonly at?: Celsius;
}

/** The resistances of a sound thermistor at one temperature, without load. */
export interface ResistanceBand {
  /** The lowest, Ω, above 0. */
  readonly low: Ohms;
  /** The nominal one, Ω. */
  readonly nominal: Ohms;
  /** The highest, Ω. */
  readonly high: Ohms;
}

const part = between(0, 0.99);
const rules: FieldRules = {
  'ohms?': part,
  'b?': part,
  'kelvins?': between(0, 100, 'K'),
  'at?': between(-273, 2000, '°C'),
};

/**
 * The resistances that a sound thermistor may have at a temperature: of a table with limits those, interpolated as the table is; else by
 * tolerances, all at their worst together.
 *
 * Method: (1 + X)(1 + Y) − 1, X the tolerance of the resistance at its temperature T₀, 1 + Y = (R(T)/R(T₀))^(±δB), which of one B is
 * exp(±B·δB·(1/T − 1/T₀)) (published data sheets of thermistors); a tolerance in kelvins is the law at a temperature so much lower or higher.
 *
 * @param law The sensor's law.
 * @param temperature °C, within the range of the law.
 * @param tolerances None when left out: low and high are then the nominal one, but of a table with limits.
 * @throws InputError at `law…`, `temperature` or `tolerances…`; `unexpected` where a table has limits and tolerances are told too.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100 };
 * resistanceBand(law, 100, { ohms: 0.05, b: 0.01 }).high // => ≈ 189.08
 */
export function resistanceBand(
  law: ThermistorLaw,
  temperature: Celsius,
  tolerances?: ThermistorTolerances,
): ResistanceBand {
  checkLaw(law, 'law');
  checkTolerances(law, tolerances, 'tolerances');
  withinLaw(law, temperature, 'temperature');
  return bandWithin(law, temperature, tolerances);
}

/** Refuses tolerances that don't go with a law. */
export function checkTolerances(
  law: ThermistorLaw,
  tolerances: ThermistorTolerances | undefined,
  path: string,
): void {
  if (tolerances === undefined) return;
  checkFields(tolerances, path, rules);
  if (hasLimits(law)) {
    throw new InputError(
      'unexpected',
      path,
      `${path} stand beside a table that has limits; give the one or the other.`,
    );
  }
  if (tolerances.ohms || tolerances.b) withinLaw(law, referenceOf(law, tolerances), `${path}.at`);
}

/** Whether a law brings its limits. */
export const hasLimits = (law: ThermistorLaw): boolean =>
  law.kind === 'table' && law.rows[0]!.low !== undefined;

/** Whether it is known how far a sound one may be off: by the table's limits, or by some tolerance. */
export const knowsLimits = (law: ThermistorLaw, tolerances?: ThermistorTolerances): boolean =>
  hasLimits(law) || Boolean(tolerances?.ohms || tolerances?.b || tolerances?.kelvins);

/** The temperature that the tolerance of the resistance belongs to. */
const referenceOf = (law: ThermistorLaw, { at }: ThermistorTolerances): Celsius =>
  at ?? (law.kind === 'b' ? law.from : 25);

/** {@link resistanceBand} of what was checked already. */
export function bandWithin(
  law: ThermistorLaw,
  temperature: Celsius,
  tolerances: ThermistorTolerances = {},
): ResistanceBand {
  const { value, b } = lnOhms(law, temperature);
  const nominal = Math.exp(value);
  if (hasLimits(law)) {
    const limit = (of: 'low' | 'high') =>
      Math.exp(lnOhms(law, temperature, (row) => row[of]!).value);
    return { low: limit('low'), nominal, high: limit('high') };
  }
  const { ohms = 0, b: ofB = 0, kelvins = 0 } = tolerances;
  const fromReference = ofB
    ? ofB * Math.abs(value - lnOhms(law, referenceOf(law, tolerances)).value)
    : 0;
  const { lowest, highest } = rangeOf(law);
  // Beyond the end of the law its slope there.
  const shifted = (by: Kelvins): number => {
    const at = temperature + by;
    if (at >= lowest && at <= highest) return lnOhms(law, at).value;
    return value + b * (1 / (at + zero) - 1 / (temperature + zero));
  };
  return {
    low: Math.exp(shifted(kelvins) - fromReference) * (1 - ohms),
    nominal,
    high: Math.exp(shifted(-kelvins) + fromReference) * (1 + ohms),
  };
}
