import { InputError, type Score, scoreSweep } from '@truesweep/core';
import type { WorldCase } from './worldCase.js';

/** What the scorer says of a case; a refusal is an answer too, anything else thrown is not. */
export function runWorldCase({ sweep, expected, told }: WorldCase): Score | InputError {
  try {
    return scoreSweep(sweep, expected, told);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}
