import { checkReadable, InputError, isInputError } from '@truesweep/core';

/**
 * Says what is to be said of facts, or of a whole result of another package. Tables of all their fields would weigh more on a page than the
 * sentences do: where something is lacking or has no words, that is the refusal, instead of any other error, which is its cause then.
 */
export function whole<Said>(facts: unknown, path: string, say: () => Said): Said {
  let cause: unknown;
  try {
    const said = say();
    if (isText(said)) return said;
  } catch (error) {
    if (isInputError(error)) throw error;
    cause = error;
  }
  checkReadable(facts, path);
  const wrong = `${path} lacks a part, or holds what has no words; it must be whole, as its type tells.`;
  throw new InputError('missing', path, wrong, undefined, { cause });
}

/** A text, or texts only in lists and groups. */
function isText(said: unknown): boolean {
  if (typeof said !== 'object') return typeof said === 'string';
  return said !== null && Object.values(said).every(isText);
}
