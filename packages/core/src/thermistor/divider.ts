import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, finiteBetween } from '../guard.js';
import type { Celsius, Ohms, Volts } from '../units.js';
import { checkLaw, withinLaw } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms, slopeWithin } from './lnOhms.js';

/** A thermistor to ground on a pull-up resistor, as in a control unit or on the bench. */
export interface PullUpDivider {
  /** The voltage that the pull-up is fed with, V, above 0. */
  readonly supply: Volts;
  /** The pull-up, Ω, above 0. */
  readonly pullUp: Ohms;
  /** The input resistance of the meter across the sensor, Ω, above 0; none when left out. */
  readonly meter?: Ohms;
}

const rules: FieldRules = {
  supply: above0('V'),
  pullUp: above0('Ω'),
  'meter?': above0('Ω'),
};

/** Refuses what is no divider. */
export const checkDivider = (divider: PullUpDivider, path: string): void =>
  checkFields(divider, path, rules);

/**
 * The voltage across a thermistor on its pull-up.
 *
 * Method: V = V_s·R/(R + R_p), R with the meter beside it. No resistance (a short) gives 0 V, an endless one (a break) what the meter leaves of
 * the supply.
 *
 * @param divider What feeds it.
 * @param ohms The sensor's resistance, Ω, 0 or more; `Infinity` for a break.
 * @returns V.
 * @throws InputError at `divider…` or `ohms`.
 *
 * @example
 * dividerVolts({ supply: 5, pullUp: 1000 }, 2502) // => ≈ 3.5722
 */
export function dividerVolts(divider: PullUpDivider, ohms: Ohms): Volts {
  checkDivider(divider, 'divider');
  if (ohms !== Infinity) finiteBetween(ohms, 0, 1e18, 'ohms', 'Ω, or Infinity');
  return voltsAcross(divider, ohms);
}

/** {@link dividerVolts} of what was checked already. */
export function voltsAcross(
  { supply, pullUp, meter = Infinity }: PullUpDivider,
  ohms: Ohms,
): Volts {
  return supply / (1 + pullUp / ohms + pullUp / meter);
}

/**
 * The resistance of a thermistor from the voltage across it.
 *
 * @param divider What feeds it.
 * @param volts V, above 0 and below what a break would show.
 * @returns Ω, above 0.
 * @throws InputError at `divider…` or `volts`; `out-of-range` where no resistance gives that voltage.
 *
 * @example
 * dividerOhms({ supply: 5, pullUp: 1000 }, 3.48) // => ≈ 2289.5
 */
export function dividerOhms(divider: PullUpDivider, volts: Volts): Ohms {
  checkDivider(divider, 'divider');
  finiteBetween(volts, -1e6, 1e6, 'volts', 'V');
  const most = voltsAcross(divider, Infinity);
  if (volts > 0 && volts < most) {
    const { supply, pullUp, meter = Infinity } = divider;
    return pullUp / (supply / volts - 1 - pullUp / meter);
  }
  throw new InputError(
    'out-of-range',
    'volts',
    `volts is ${volts} V; a resistance there gives more than 0 V and less than ${most.toPrecision(4)} V, which a break shows.`,
  );
}

/**
 * How much the voltage across a thermistor on its pull-up changes with temperature. For one law it is greatest where the pull-up, with the
 * meter beside it, is the sensor's resistance.
 *
 * Method: dV/dT = V_s·R·R_p/(R + R_p)² · (dR/dT)/R, with R_p and the meter taken together.
 *
 * @returns V/K, below 0.
 * @throws InputError at `divider…`, `law…` or `temperature`.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 20, to: 100 };
 * dividerSlope({ supply: 5, pullUp: 1000 }, law, 90) // => ≈ -0.01829
 */
export function dividerSlope(
  divider: PullUpDivider,
  law: ThermistorLaw,
  temperature: Celsius,
): number {
  checkDivider(divider, 'divider');
  checkLaw(law, 'law');
  withinLaw(law, temperature, 'temperature');
  const ohms = Math.exp(lnOhms(law, temperature).value);
  return voltsPerLogOhms(divider, ohms) * slopeWithin(law, temperature);
}

/** dV/d ln R, V. */
export function voltsPerLogOhms(divider: PullUpDivider, ohms: Ohms): Volts {
  const volts = voltsAcross(divider, ohms);
  return (volts * volts * divider.pullUp) / (divider.supply * ohms);
}
