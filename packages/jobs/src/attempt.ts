import { type InputError, isInputError } from '@truesweep/core';

/** What a reader gives, or its refusal as a value. */
export function attempt<Value>(read: () => Value): Value | InputError {
  try {
    return read();
  } catch (error) {
    if (isInputError(error)) return error;
    throw error;
  }
}
