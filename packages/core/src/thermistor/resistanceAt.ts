import type { Celsius, Ohms } from '../units.js';
import { checkLaw, withinLaw } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';
import { lnOhms, slopeWithin } from './lnOhms.js';

/**
 * The nominal resistance of a thermistor at a temperature.
 *
 * @param law The sensor's law.
 * @param temperature °C, within the range of the law: nothing is extrapolated.
 * @returns Ω, without load.
 * @throws InputError at `law…` or `temperature`.
 *
 * @example
 * const law = { kind: 'b', b: 3435, ohms: 10000, from: 25, to: 85 };
 * resistanceAt(law, 85) // => ≈ 1451.3
 */
export function resistanceAt(law: ThermistorLaw, temperature: Celsius): Ohms {
  checkLaw(law, 'law');
  withinLaw(law, temperature, 'temperature');
  return Math.exp(lnOhms(law, temperature).value);
}

/**
 * How steeply a thermistor's resistance falls at a temperature, as a part of itself: (dR/dT)/R.
 *
 * @param law The sensor's law; of a table the slope of its step.
 * @param temperature °C, within the range of the law.
 * @returns Per K, below 0.
 * @throws InputError at `law…` or `temperature`.
 *
 * @example
 * relativeSlopeAt({ kind: 'b', b: 3435, ohms: 10000, from: 25, to: 85 }, 25) // => ≈ -0.03864
 */
export function relativeSlopeAt(law: ThermistorLaw, temperature: Celsius): number {
  checkLaw(law, 'law');
  withinLaw(law, temperature, 'temperature');
  return slopeWithin(law, temperature);
}
