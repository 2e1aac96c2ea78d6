import { InputError } from './errors.js';

/** Refuses anything but a finite number between two bounds; returns it. */
export function finiteBetween(
  value: unknown,
  low: number,
  high: number,
  path: string,
  unit = '',
): number {
  if (typeof value === 'number' && value >= low && value <= high && Math.abs(value) !== Infinity) {
    return value;
  }
  throw new InputError(
    codeFor(value, low),
    path,
    `${path} is ${shown(value)}; ${wanted(low, high, unit)}.`,
  );
}

/** Refuses anything but a whole number between two bounds; returns it. */
export function wholeNumber(value: unknown, low: number, high: number, path: string): number {
  if (Number.isInteger(finiteBetween(value, low, high, path))) return value as number;
  throw new InputError('not-whole', path, `${path} is ${shown(value)}; it must be a whole number.`);
}

/** Refuses anything but a finite number greater than 0; returns it. */
export function positive(value: unknown, path: string, unit = ''): number {
  if (typeof value === 'number' && value > 0 && value !== Infinity) return value;
  const code = value === 0 ? 'zero' : codeFor(value, 0);
  throw new InputError(
    code,
    path,
    `${path} is ${shown(value)}; it must be a number above 0${spaced(unit)}.`,
  );
}

/** Refuses anything but 0 Ω, ∞ Ω or a resistance from 1 pΩ to 10¹⁸ Ω (so that no product overflows); returns it. */
export function resistance(value: unknown, path: string): number {
  if (value === 0 || value === Number.POSITIVE_INFINITY) return value;
  if (typeof value === 'number' && value >= 1e-12 && value <= 1e18) return value;
  throw new InputError(
    typeof value === 'number' && value > 0 ? 'out-of-range' : codeFor(value, 0),
    path,
    `${path} is ${shown(value)}; a resistance is 0 Ω, from 1e-12 to 1e18 Ω, or Infinity for no connection.`,
  );
}

/** Refuses anything but one of the given words; returns it. */
export function oneOf<Word extends string>(
  value: unknown,
  allowed: readonly Word[],
  path: string,
): Word {
  if (allowed.includes(value as Word)) return value as Word;
  throw new InputError(
    value === undefined || value === null ? 'missing' : 'unknown-choice',
    path,
    `${path} is ${shown(value)}; it must be one of: ${allowed.join(', ')}.`,
  );
}

/** Refuses a missing part of an object. */
export function present(value: unknown, path: string, what: string): void {
  if (typeof value === 'object' && value !== null) return;
  throw new InputError('missing', path, `${path} is missing; it must be ${what}.`);
}

function codeFor(value: unknown, low: number): string {
  if (value === undefined || value === null) return 'missing';
  if (typeof value !== 'number' || !Number.isFinite(value)) return 'not-finite';
  return low === 0 && value < 0 ? 'negative' : 'out-of-range';
}

function shown(value: unknown): string {
  if (value === undefined || value === null) return 'missing';
  return typeof value === 'string' ? `the text "${value}"` : String(value).replace('-', '−');
}

function wanted(low: number, high: number, unit: string): string {
  return `it must be a finite number from ${low} to ${high}${spaced(unit)}`;
}

function spaced(unit: string): string {
  return unit && ` ${unit}`;
}
