import { finiteBetween, oneOf, wholeNumber } from '../guard.js';
import { measureSpelling } from './measureSpelling.js';

/** A unit that a measure is printed in. */
export type MeasureUnit =
  | '°C'
  | '°F'
  | 'K'
  | 'Pa'
  | 'hPa'
  | 'kPa'
  | 'mbar'
  | 'bar'
  | 'inHg'
  | 'mmHg'
  | 'cmHg'
  | 'psi'
  | 'm'
  | 'ft';

const spelled = Object.values(measureSpelling).flatMap(({ units }) => units);

/**
 * Writes a temperature (°C), a temperature difference (K), a pressure (Pa) or a height (m) in a unit, rounded to decimal places. `K` is taken
 * for a difference.
 *
 * @param value In °C, K, Pa or m.
 * @param unit What it is written in.
 * @param places Decimal places, 0 to 9.
 * @throws InputError at `value`, `unit` or `places`.
 *
 * @example
 * formatMeasure(20, '°F', 1) // => '68.0 °F'
 * formatMeasure(101325, 'kPa', 1) // => '101.3 kPa'
 * formatMeasure(-3.04, '°C', 1) // => '−3.0 °C'
 */
export function formatMeasure(value: number, unit: MeasureUnit, places: number): string {
  finiteBetween(value, -1e15, 1e15, 'value');
  wholeNumber(places, 0, 9, 'places');
  const symbols = spelled.map(({ symbol }) => symbol);
  oneOf(unit, symbols, 'unit');
  const { factor, zero = 0 } = [kelvin, ...spelled].find(({ symbol }) => symbol === unit)!;
  const written = (value / factor + zero).toFixed(places);
  const isZero = Number(written) === 0;
  return `${(isZero ? written.replace('-', '') : written).replace('-', '−')} ${unit}`;
}

/** Of the two that are written K the difference. */
const kelvin = measureSpelling['temperature-difference'].units[0]!;
