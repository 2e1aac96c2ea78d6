import { InputError, type Score, scoreSweep } from '@truesweep/core';
import type { FairCase } from './fairCase.js';

/** What the scorer says of a case; a refusal is an answer too, anything else thrown is not. */
export function runWorldCase({
  sweep,
  expected,
  told,
}: Pick<FairCase, 'sweep' | 'expected' | 'told'>): Score | InputError {
  try {
    return scoreSweep(sweep, expected, told);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}
