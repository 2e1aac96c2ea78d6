import { formatQuantity, type QuantityUnit } from '@truesweep/core';
import type { Quantity, WorkingUnit } from './quantity.js';

/** Significant digits of a result whose uncertainty isn't known. */
export const usualDigits = 4;
/** Those of a given value, which is shown as it was given. */
export const givenDigits = 12;
/** With as many a number is written exactly. */
export const mostDigits = 17;

/** Units that take prefixes as ohms do; a Celsius temperature, a length, a difference and what is compound take none. */
const prefixed: readonly WorkingUnit[] = ['V', 'Ω', 'A', 'W', 'S', 's', 'F', 'Hz', 'Pa'];

/** A value that ends within so many digits is written to its end, as 298.15 K. */
const exactDigits = 6;

/**
 * How many digits of a value are sensible: as many as its uncertainty bears out, to the second digit of that (JCGM 100:2008, 7.2.6); four where it
 * isn't known.
 */
export function digitsOf({ value, uncertainty }: Pick<Quantity, 'value' | 'uncertainty'>): number {
  if (value === 0) return usualDigits;
  if (uncertainty === undefined) {
    const ends = [5, exactDigits].find(
      (digits) => Math.abs(Number(value.toPrecision(digits)) - value) <= 1e-12 * Math.abs(value),
    );
    const isShort = Number(value.toPrecision(usualDigits)) === Number(value.toPrecision(12));
    return isShort ? usualDigits : (ends ?? usualDigits);
  }
  const place = (size: number) => Math.floor(Math.log10(Math.abs(size)));
  return Math.min(mostDigits, Math.max(1, place(value) - place(uncertainty) + 2));
}

/**
 * Writes a value with its unit: with an engineering prefix where the unit takes one, rounded first and the prefix chosen then.
 *
 * @param trim Leaves out zeros at the end of the decimals.
 */
export function writeQuantity(
  { value, unit }: Pick<Quantity, 'value' | 'unit'>,
  digits: number,
  trim = false,
): string {
  if (prefixed.includes(unit))
    return formatQuantity(value, 'Ω', { digits, trim }).replace('Ω', unit);
  if (unit === '%' || unit === '°')
    return formatQuantity(value, unit as QuantityUnit, { digits, trim });
  return `${writeNumber(value, digits, trim)}${unit === '1' ? '' : `\u00a0${unit}`}`;
}

/** A written quantity's number and, where it has one, its unit. */
export const numberAndUnit = (text: string): readonly string[] =>
  text.split(/(?<=\d)(?=°$)|\u00a0/);

/** Writes a plain number with a true minus sign; far from one with an exponent. */
export function writeNumber(value: number, digits: number, trim = false): string {
  const [mantissa = '', exponent = '0'] = value.toExponential(digits - 1).split('e');
  const place = Number(exponent);
  const isPlain = value === 0 || (place >= -4 && place < Math.max(digits, 7));
  const figures = isPlain ? value.toFixed(Math.max(0, digits - 1 - place)) : mantissa;
  const short = trim && figures.includes('.') ? figures.replace(/\.?0+$/, '') : figures;
  return `${short}${isPlain ? '' : `e${place}`}`.replaceAll('-', '\u2212');
}

/** A number of a formula itself. */
export const writeConstant = (value: number): string =>
  value === Math.PI ? 'π' : writeNumber(value, givenDigits, true);
