import { finiteBetween } from '../guard.js';
import type { Metres, Pascals } from '../units.js';

/** At sea level: pressure, Pa, and temperature, K; and how it falls with height, K/m (ISO 2533:1975). */
export const seaLevelPressure: Pascals = 101_325;
const seaLevelTemperature = 288.15;
const lapse = 0.0065;
/** Gravity over gas constant times lapse: 9.80665/(287.05287 · 0.0065). */
export const exponent = 9.80665 / (287.05287 * lapse);

/** By what part the temperature of the standard atmosphere has fallen at a height. */
export const fallenBy = (altitude: Metres): number => (lapse * altitude) / seaLevelTemperature;

/**
 * The pressure of the standard atmosphere at a height above sea level: what a barometer there shows on an average day.
 *
 * Method: ISO 2533:1975, formula 12, for the layer below 11 km.
 *
 * @param altitude m above sea level, −1000 to 11,000.
 * @returns Pa.
 * @throws InputError at `altitude`.
 *
 * @example
 * standardPressure(0) // => 101325
 * standardPressure(1000) // => ≈ 89874.6
 */
export function standardPressure(altitude: Metres): Pascals {
  finiteBetween(altitude, -1000, 11_000, 'altitude', 'm');
  return seaLevelPressure * (1 - fallenBy(altitude)) ** exponent;
}
