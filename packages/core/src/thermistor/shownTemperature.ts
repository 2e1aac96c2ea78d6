import { finiteBetween } from '../guard.js';
import type { Celsius } from '../units.js';

/** What a scan tool shows of a temperature. */
export interface ShownTemperature {
  /** The byte that the control unit sends, a whole number from 0 to 255. */
  readonly count: number;
  /** What is shown of it, °C, −40 to 215, in steps of 1 °C. */
  readonly celsius: Celsius;
}

/**
 * What a scan tool shows of a coolant or air temperature (PIDs 05 and 0F): the byte A stands for A − 40 °C. What lies beyond −40 to 215 °C is shown as
 * the end. A control unit that holds a sensor for broken sends a value of its own instead: read the trouble codes first.
 *
 * Method: ISO 15031-5 and SAE J1979 as quoted publicly.
 *
 * @param temperature °C, −273.15 to 10,000.
 * @throws InputError at `temperature`.
 *
 * @example
 * shownTemperature(79.6) // => { count: 120, celsius: 80 }
 */
export function shownTemperature(temperature: Celsius): ShownTemperature {
  finiteBetween(temperature, -273.15, 1e4, 'temperature', '°C');
  const count = Math.min(255, Math.max(0, Math.round(temperature + 40)));
  return { count, celsius: count - 40 };
}
