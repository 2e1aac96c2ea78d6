import { InputError } from './errors.js';

/** Refuses anything but a finite number between two bounds; returns it. */
export function finiteBetween(
  value: unknown,
  low: number,
  high: number,
  path: string,
  unit = '',
): number {
  if (isNumber(value) && value >= low && value <= high) return value;
  return refuse(value, path, `a finite number from ${low} to ${high}${spaced(unit)}`, low);
}

/** Refuses anything but a whole number between two bounds; returns it. */
export function wholeNumber(value: unknown, low: number, high: number, path: string): number {
  const number = finiteBetween(value, low, high, path);
  return Number.isInteger(number) ? number : refuse(value, path, 'a whole number', 'not-whole');
}

/** Refuses anything but a finite number greater than 0; returns it. */
export function positive(value: unknown, path: string, unit = ''): number {
  if (isNumber(value) && value > 0) return value;
  return refuse(value, path, `a number above 0${spaced(unit)}`, value === 0 ? 'zero' : 0);
}

/** Refuses anything but 0 Ω, ∞ Ω or a resistance from 1 pΩ to 10¹⁸ Ω (so that no product overflows); returns it. */
export function resistance(value: unknown, path: string): number {
  if (value === 0 || value === Infinity) return value;
  if (isNumber(value) && value >= 1e-12 && value <= 1e18) return value;
  const wanted = 'a resistance: 0 Ω, from 1e-12 to 1e18 Ω, or Infinity for no connection';
  return refuse(value, path, wanted, 0);
}

/** Refuses anything but one of the given words; returns it. */
export function oneOf<Word extends string>(
  value: unknown,
  allowed: readonly Word[],
  path: string,
): Word {
  if (allowed.includes(value as Word)) return value as Word;
  return refuse(value, path, `one of: ${allowed.join(', ')}`, 'unknown-choice');
}

/** Refuses a missing part of an object. */
export function present(value: unknown, path: string, what: string): void {
  if (typeof value !== 'object' || value === null) refuse(value, path, what, 'missing');
}

/**
 * Says what a field is and what it must be.
 *
 * @param kind The error's code, or the lowest number allowed, for the code of a wrong number.
 */
function refuse(value: unknown, path: string, wanted: string, kind: string | number): never {
  const missing = value === undefined || value === null;
  const shown = missing
    ? 'missing'
    : typeof value === 'string'
      ? `the text "${value}"`
      : String(value).replace('-', '−');
  const code = missing ? 'missing' : typeof kind === 'string' ? kind : numberCode(value, kind);
  throw new InputError(code, path, `${path} is ${shown}; it must be ${wanted}.`);
}

function numberCode(value: unknown, low: number): string {
  if (!isNumber(value)) return 'not-finite';
  return low === 0 && value < 0 ? 'negative' : 'out-of-range';
}

function isNumber(value: unknown): value is number {
  return Number.isFinite(value);
}

function spaced(unit: string): string {
  return unit && ` ${unit}`;
}
