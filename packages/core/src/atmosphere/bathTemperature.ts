import type { Celsius, Kelvins } from '../units.js';
import { boilingTemperature } from './boilingTemperature.js';
import { type PressureSource, type StationPressure, stationPressure } from './stationPressure.js';

/** How warm a bath is that knows its temperature. */
export interface BathTemperature {
  /** °C. */
  readonly temperature: Celsius;
  /** Its standard uncertainty, K, 0 or more. */
  readonly uncertainty: Kelvins;
}

/**
 * Crushed ice with just enough water: 0 °C, and good for ±0.2 K in a kitchen (common practice, no source); shaved ice in air-saturated water is the
 * ice point itself (ASTM E563, scope). Ice straight out of a freezer, dry, is colder.
 *
 * @example
 * iceBath // => { temperature: 0, uncertainty: 0.1 }
 */
export const iceBath: BathTemperature = { temperature: 0, uncertainty: 0.1 };

/**
 * Water at a full boil: as warm as the pressure of the air has it, and as sure as that is known.
 *
 * Method: {@link boilingTemperature} at {@link stationPressure}; the uncertainty by the slope there.
 *
 * @param source What the pressure of the air is known from.
 * @throws InputError at `source…`.
 *
 * @example
 * const bath = boilingBath({ kind: 'altitude', altitude: 1500 });
 * bath.temperature // => ≈ 94.98
 * bath.uncertainty // => ≈ 0.482
 */
export function boilingBath(source: PressureSource): BathTemperature & {
  /** The air at the bench. */
  readonly station: StationPressure;
} {
  const station = stationPressure(source);
  const { pressure, uncertainty } = station;
  const perPascal = (boilingTemperature(pressure + 50) - boilingTemperature(pressure - 50)) / 100;
  return {
    station,
    temperature: boilingTemperature(pressure),
    uncertainty: uncertainty * perPascal,
  };
}
