import { type InputErrorCode, isInputError } from '@truesweep/core';
import { errorExamples } from './errorExamples.js';

/** A code with a refusal that bears it. */
export interface ErrorEntry {
  readonly code: InputErrorCode;
  readonly path: string;
  readonly sentence: string;
}

/** Every code with its example: what the library says when it is provoked, or what is said of a file. */
export function errorEntries(): readonly ErrorEntry[] {
  const codes = Object.keys(errorExamples) as InputErrorCode[];
  return codes.map((code) => {
    const example = errorExamples[code];
    return typeof example === 'function' ? provoked(example, code) : { code, ...example };
  });
}

function provoked(act: () => unknown, code: InputErrorCode): ErrorEntry {
  try {
    act();
  } catch (error) {
    if (isInputError(error)) return { code: error.code, path: error.path, sentence: error.message };
    throw error;
  }
  throw new Error(`The example of ${code} is not refused.`);
}
