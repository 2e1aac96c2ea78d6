import { checkFields, type FieldRules, InputError } from '@truesweep/core';
import { shown } from './refusal.js';

/** Refuses anything but a text. */
export function checkText(value: unknown, path: string, wanted = 'a text'): void {
  if (typeof value === 'string') return;
  throw new InputError(
    value === undefined ? 'missing' : 'not-a-text',
    path,
    `${path} is ${shown(value)}; it must be ${wanted}.`,
  );
}

/** Refuses anything but the path of a file. */
export function checkPath(value: unknown): void {
  checkText(value, 'path', 'the path of a file');
  if (value !== '') return;
  throw new InputError('empty', 'path', 'path is empty; it must be the path of a file.');
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

/** Refuses anything but a number of bytes. */
export const checkSize = (value: unknown, path: string): void => {
  if (Number.isSafeInteger(value) && (value as number) >= 0) return;
  const wrong = `${path} is ${shown(value)}; it must be a number of bytes, 0 or more.`;
  throw new InputError('not-a-count', path, wrong);
};

/** Refuses anything but a stream, or another async iterable. */
export function checkSource(value: unknown): void {
  if (typeof value === 'object' && value !== null && Symbol.asyncIterator in value) return;
  throw new InputError(
    value === undefined || value === null ? 'missing' : 'not-bytes',
    'source',
    `source is ${shown(value)}; it must be a stream or another async iterable of Uint8Arrays.`,
  );
}

const any = () => {};

/** The fields of a recording in a job that tell its file. */
export const namedRules: FieldRules = {
  file: checkText,
  'bytes?': checkSize,
  'sha256?': checkText,
  'text?': any,
  'sound?': any,
  'stretches?': any,
};

const identityRules: FieldRules = { bytes: checkSize, sha256: checkText };

/** Refuses what does not tell a recording from others. */
export function checkIdentity(value: unknown, path: string): void {
  checkFields(value, path, identityRules);
}
