import { InputError } from '../errors.js';

/** Refuses anything but one of some words; returns it. */
export function oneOf<Word extends string>(
  value: Word,
  words: readonly Word[],
  path: string,
): Word {
  if (words.includes(value)) return value;
  throw new InputError(
    value === undefined ? 'missing' : 'unknown-choice',
    path,
    `${path} is ${String(value)}; it must be one of ${words.join(', ')}.`,
  );
}
