import { checkFields } from '../fields.js';
import { finiteBetween, oneOf, wholeBetween, yesOrNo } from '../guard.js';
import { type QuantityUnit, takesPrefixes, unitSpelling } from './unitSpelling.js';

/** How a quantity is written. */
export interface QuantityFormat {
  /** Significant digits, 1 to 17; 3 by default. */
  readonly digits?: number;
  /** Leaves out zeros at the end of the decimals: 4.7 kΩ for 4.70 kΩ; false by default. */
  readonly trim?: boolean;
  /** The decimal sign; a point by default. */
  readonly decimal?: '.' | ',';
}

const prefixes: ReadonlyMap<number, string> = new Map([
  [-12, 'p'],
  [-9, 'n'],
  [-6, 'µ'],
  [-3, 'm'],
  [0, ''],
  [3, 'k'],
  [6, 'M'],
  [9, 'G'],
  [12, 'T'],
]);

/**
 * Writes a quantity with an engineering prefix, a no-break space before the unit and a true minus
 * sign. It is rounded first and the prefix chosen then, so that 0.9996 V is 1.00 V and never
 * 1000 mV. A fraction in `%` has no prefix, an angle in `°` neither prefix nor space (SI brochure, 5.4.3). Beyond pico and tera it is written with an exponent.
 *
 * `parseQuantity` reads the result back, within the rounding; only a decimal comma followed by
 * exactly three digits (`4,735 V`, from `digits` above 3) is refused there, because it has two readings.
 *
 * @param value The quantity in the SI unit without prefix; a fraction for `%`.
 * @throws InputError `not-finite`; `out-of-range` for `digits` that are no whole number from 1 to 17.
 *
 * @example
 * formatQuantity(4700, 'Ω') // => '4.70\u00a0kΩ'
 * formatQuantity(4700, 'Ω', { trim: true }) // => '4.7\u00a0kΩ'
 * formatQuantity(-0.0125, 'V', { decimal: ',' }) // => '\u221212,5\u00a0mV'
 * formatQuantity(0.05, '%', { digits: 2 }) // => '5.0\u00a0%'
 * formatQuantity(-1.5, '°', { digits: 2 }) // => '\u22121.5°'
 */
export function formatQuantity(
  value: number,
  unit: QuantityUnit,
  options: QuantityFormat = {},
): string {
  check(value, unit, options);
  const { digits = 3, trim = false, decimal = '.' } = options;
  const { figures, power } = rounded(value, digits, unit === '%' ? 2 : 0);
  const { shift, mark, prefix } = scale(power, unit);
  const plain = placePoint(figures, power - shift);
  const shown = trim && plain.includes('.') ? plain.replace(/\.?0+$/, '') : plain;
  const sign = value < 0 ? '\u2212' : '';
  const space = unit === '°' ? '' : '\u00a0';
  return `${sign}${shown.replace('.', decimal)}${mark}${space}${prefix}${unit}`;
}

function check(value: number, unit: QuantityUnit, options: QuantityFormat): void {
  finiteBetween(value, -Number.MAX_VALUE, Number.MAX_VALUE, 'value');
  oneOf(unit, Object.keys(unitSpelling), 'unit');
  checkFields(options, 'options', {
    'digits?': wholeBetween(1, 17),
    'trim?': yesOrNo,
    'decimal?': ['.', ','],
  });
}

/** The significant figures and the power of ten of the first of them, after rounding. */
function rounded(value: number, digits: number, shift: number): { figures: string; power: number } {
  if (value === 0) return { figures: '0', power: 0 };
  const [mantissa = '', exponent] = Math.abs(value)
    .toExponential(digits - 1)
    .split('e');
  return { figures: mantissa.replace('.', ''), power: Number(exponent) + shift };
}

/** The power of ten that the prefix or the written exponent takes over. */
function scale(power: number, unit: QuantityUnit): { shift: number; mark: string; prefix: string } {
  const prefixed = takesPrefixes(unit);
  const shift = prefixed ? Math.floor(power / 3) * 3 : 0;
  const prefix = prefixes.get(shift);
  const readable = prefixed ? prefix !== undefined : power >= -6 && power < 9;
  if (readable) return { shift, mark: '', prefix: prefix ?? '' };
  return { shift: power, mark: `e${power < 0 ? '\u2212' : ''}${Math.abs(power)}`, prefix: '' };
}

/** Sets the decimal point after the figure of the ones, whose place is 0 for the first figure. */
function placePoint(figures: string, place: number): string {
  if (place < 0) return `0.${'0'.repeat(-place - 1)}${figures}`;
  const whole = figures.slice(0, place + 1).padEnd(place + 1, '0');
  const parts = figures.slice(place + 1);
  return parts ? `${whole}.${parts}` : whole;
}
