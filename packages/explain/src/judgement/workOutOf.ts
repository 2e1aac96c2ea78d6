import { checkReadable, InputError, isInputError } from '@truesweep/core';
import type { Working } from '../working.js';
import { type Outcome, type Sheet, workOut } from '../workOut.js';

/**
 * Works out something of a result that another package made: where it lacks a part, that is the refusal, instead of any other error, which is its
 * cause then.
 */
export function workOutOf(
  result: unknown,
  path: string,
  title: () => string,
  write: (sheet: Sheet) => Outcome,
): Working {
  try {
    return workOut(title(), write);
  } catch (cause) {
    if (isInputError(cause)) throw cause;
    checkReadable(result, path);
    const wrong = `${path} lacks a part, or holds what no working is of; it must be whole, as its type tells.`;
    throw new InputError('missing', path, wrong, undefined, { cause });
  }
}
