import { checkReadable, InputError, isInputError } from '@truesweep/core';

/**
 * Makes something of a result or a working that was made elsewhere: where that lacks a part, that is the refusal, instead of any other error,
 * which is its cause then.
 */
export function whole<Made>(given: unknown, path: string, make: () => Made): Made {
  try {
    return make();
  } catch (cause) {
    if (isInputError(cause)) throw cause;
    checkReadable(given, path);
    // Anything else than a part that isn't there is no fault of who gave it.
    if (!(cause instanceof TypeError)) throw cause;
    const wrong = `${path} lacks a part, or holds what nothing can be written of; it must be whole, as its type tells.`;
    throw new InputError('missing', path, wrong, undefined, { cause });
  }
}
