import { InputError } from '@truesweep/core';

/** A value as a refusal shows it, whatever it is. */
export function shown(value: unknown): string {
  if (value === undefined || value === null) return 'missing';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (typeof value !== 'string')
    return typeof value === 'object' ? 'an object' : `a ${typeof value}`;
  return JSON.stringify(value.length > 40 ? `${value.slice(0, 39)}…` : value);
}

/** Refuses an option that is no text. */
export function textOption(value: unknown, path: string): void {
  if (typeof value === 'string') return;
  throw new InputError('not-a-text', path, `${path} is ${shown(value)}; it must be a text.`);
}

/** Refuses anything but bytes. */
export function checkBytes(value: unknown, path: string): void {
  if (value instanceof Uint8Array) return;
  throw new InputError(
    value === undefined || value === null ? 'missing' : 'not-bytes',
    path,
    `${path} is ${shown(value)}; it must be the bytes of a file, as a Uint8Array.`,
  );
}

/** Refuses anything but true and false. */
export function checkYesOrNo(value: unknown, path: string): void {
  if (typeof value === 'boolean') return;
  throw new InputError(
    'not-boolean',
    path,
    `${path} is ${shown(value)}; it must be true or false.`,
  );
}

/** Refuses anything but a number. */
export function checkNumber(value: unknown, path: string): void {
  if (typeof value === 'number' && Number.isFinite(value)) return;
  throw new InputError('not-finite', path, `${path} is ${shown(value)}; it must be a number.`);
}
