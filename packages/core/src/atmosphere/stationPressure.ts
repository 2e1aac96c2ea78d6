import { checkKind, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { Metres, Pascals } from '../units.js';
import { exponent, fallenBy, seaLevelPressure, standardPressure } from './standardPressure.js';

/** What the pressure of the air at the bench is known from. */
export type PressureSource =
  /** A barometer on the bench that shows the pressure there, not one set to sea level. */
  | {
      readonly kind: 'barometer';
      /** What it shows, Pa, 10,000 to 120,000. */
      readonly pressure: Pascals;
      /** Its standard uncertainty, Pa, 0 or more. */
      readonly uncertainty: Pascals;
    }
  /** The altimeter setting (QNH) that an airfield or a weather service near by reports, and the bench's height. */
  | {
      readonly kind: 'altimeter-setting';
      /** The setting, Pa, 85,000 to 110,000. */
      readonly setting: Pascals;
      /** Its standard uncertainty at the bench, Pa, 0 or more. */
      readonly uncertainty: Pascals;
      /** The bench's height above sea level, m, −500 to 6000. */
      readonly altitude: Metres;
    }
  /** The bench's height alone; the weather is not known. */
  | {
      readonly kind: 'altitude';
      /** The bench's height above sea level, m, −500 to 6000. */
      readonly altitude: Metres;
    };

/** The pressure of the air at the bench. */
export interface StationPressure {
  /** Pa, above 0. */
  readonly pressure: Pascals;
  /** Standard uncertainty, Pa, 0 or more. */
  readonly uncertainty: Pascals;
}

/** Half of the 3 kPa, either way, that the weather leaves unknown (common practice, no source). */
const weather: Pascals = 1500;

const altitude = between(-500, 6000, 'm');
const uncertainty = between(0, 1e5, 'Pa');
const kinds: Readonly<Record<PressureSource['kind'], FieldRules>> = {
  barometer: { pressure: between(1e4, 1.2e5, 'Pa'), uncertainty },
  'altimeter-setting': { setting: between(8.5e4, 1.1e5, 'Pa'), uncertainty, altitude },
  altitude: { altitude },
};

/**
 * The pressure of the air at the bench, which an open port or boiling water knows.
 *
 * A weather map's pressure at sea level is no altimeter setting: services reduce it by the temperature of the day, so it must not be turned
 * back here. From the height alone the weather leaves ±3 kPa (common practice, no source).
 *
 * Method: the altimeter setting by the standard atmosphere turned back (ISO 2533:1975): p^n = QNH^n − p₀^n · 0.0065 H/288.15 with n = 0.190263.
 *
 * @throws InputError at `source…`.
 *
 * @example
 * stationPressure({ kind: 'altitude', altitude: 500 }).pressure // => ≈ 95460.8
 * const source = { kind: 'altimeter-setting', setting: 102000, uncertainty: 50, altitude: 1000 };
 * stationPressure(source).pressure // => ≈ 90487.1
 */
export function stationPressure(source: PressureSource): StationPressure {
  checkKind(source, 'source', kinds as Readonly<Record<string, FieldRules>>);
  if (source.kind === 'barometer')
    return { pressure: source.pressure, uncertainty: source.uncertainty };
  if (source.kind === 'altitude') {
    return { pressure: standardPressure(source.altitude), uncertainty: weather };
  }
  const power = 1 / exponent;
  const setting = source.setting ** power;
  const pressure = (setting - seaLevelPressure ** power * fallenBy(source.altitude)) ** exponent;
  return { pressure, uncertainty: source.uncertainty * (pressure / source.setting) ** (1 - power) };
}
