import type { InputError } from '@truesweep/core';
import { refusalSentence } from '@truesweep/wording';

/** What an input was refused for, as it is printed. */
export function refusalOf({ path, place, message, code }: InputError): string {
  return refusalSentence({ path, place, sentence: message, code });
}
