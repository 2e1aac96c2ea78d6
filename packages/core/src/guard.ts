import { InputError } from './errors.js';
import type { InputErrorCode } from './inputErrorCode.js';

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
  if (Number.isInteger(value) && (value as number) >= low && (value as number) <= high) {
    return value as number;
  }
  const within = isNumber(value) && value >= low && value <= high;
  return refuse(value, path, `a whole number from ${low} to ${high}`, within ? 'not-whole' : low);
}

/** Far beyond anything that is recorded, in any SI unit, and small enough that no square of it overflows. */
export const mostRecorded = 1e12;

/** What is above 0 lies between these in any SI unit, so that neither products nor quotients of a few overflow. */
export const leastAbove0 = 1e-30;
export const mostAbove0 = 1e30;

/** Refuses anything but a number from 10⁻³⁰ to 10³⁰; returns it. */
export function positive(value: unknown, path: string, unit = ''): number {
  if (isNumber(value) && value >= leastAbove0 && value <= mostAbove0) return value;
  const wanted = `a number above 0${spaced(unit)}, from 1e-30 to 1e30`;
  return refuse(value, path, wanted, value === 0 ? 'zero' : 0);
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
  return refuse(
    value,
    path,
    `one of: ${allowed.map((one) => (typeof one === 'string' ? one : shown(one))).join(', ')}`,
    'unknown-choice',
  );
}

/** A rule of `checkFields`: a finite number between two bounds. */
export function between(low: number, high: number, unit?: string) {
  return (value: unknown, path: string): number => finiteBetween(value, low, high, path, unit);
}

/** A rule of `checkFields`: a whole number between two bounds. */
export function wholeBetween(low: number, high: number) {
  return (value: unknown, path: string): number => wholeNumber(value, low, high, path);
}

/** A rule of `checkFields`: a finite number greater than 0. */
export function above0(unit?: string) {
  return (value: unknown, path: string): number => positive(value, path, unit);
}

/** Refuses anything but true and false; returns it. */
export function yesOrNo(value: unknown, path: string): boolean {
  return typeof value === 'boolean' ? value : refuse(value, path, 'true or false', 'not-boolean');
}

/** Refuses anything but a text; returns it. */
export function text(value: unknown, path: string): string {
  return typeof value === 'string' ? value : refuse(value, path, 'a text', 'not-a-text');
}

/**
 * Says what a field is and what it must be.
 *
 * @param kind The error's code, or the lowest number allowed, for the code of a wrong number.
 */
export function refuse(
  value: unknown,
  path: string,
  wanted: string,
  kind: InputErrorCode | number,
): never {
  const missing = value === undefined || value === null;
  const code = missing ? 'missing' : typeof kind === 'string' ? kind : numberCode(value, kind);
  throw new InputError(code, path, `${path} is ${shown(value)}; it must be ${wanted}.`);
}

function numberCode(value: unknown, low: number): InputErrorCode {
  if (!isNumber(value)) return 'not-finite';
  return low === 0 && value < 0 ? 'negative' : 'out-of-range';
}

/** What stands in a field, or at a place of a list; a getter that throws is refused, with what it threw as the cause. */
export function read(from: object, name: string | number, path: string): unknown {
  try {
    return from[name as never];
  } catch (cause) {
    const at = typeof name === 'number' ? `${path}[${name}]` : `${path}.${name}`;
    const why = cause instanceof Error ? clipped(cause.message) : shown(cause);
    const sentence = `${at} could not be read (${why}); it must be a plain value.`;
    throw new InputError('unreadable', at, sentence, undefined, { cause });
  }
}

/** A value as a refusal shows it, whatever it is. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return 'missing';
  if (typeof value === 'number') return String(value).replace('-', '−');
  if (typeof value === 'string') return `the text "${clipped(value)}"`;
  if (typeof value !== 'object')
    return typeof value === 'boolean' ? `${value}` : `a ${typeof value}`;
  return Array.isArray(value) || ArrayBuffer.isView(value) ? 'a list' : 'a group of fields';
}

/** The beginning of a text that no line would hold. */
export function clipped(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

function isNumber(value: unknown): value is number {
  return Number.isFinite(value);
}

function spaced(unit: string): string {
  return unit && ` ${unit}`;
}
