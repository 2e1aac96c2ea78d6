import { InputError } from '@truesweep/core';

/**
 * Tags the template of a sentence: refuses what is neither a text nor a finite number, which a template would turn into `undefined` or `NaN`.
 * The path tells which of its words it is, the sentence after what it stands.
 */
export function say(parts: TemplateStringsArray, ...words: readonly (string | number)[]): string {
  for (const [i, word] of words.entries()) {
    if (typeof word !== 'string')
      number(word, `words[${i}]`, `a text or a number, after “${parts[i]}”`);
  }
  return String.raw({ raw: parts }, ...words);
}

/** Refuses what is no finite number. */
export function number(value: unknown, path: string, wanted = 'a number'): void {
  if (Number.isFinite(value)) return;
  const code = value === undefined ? 'missing' : 'not-finite';
  throw new InputError(code, path, `${path} is none; it must be ${wanted}.`);
}
