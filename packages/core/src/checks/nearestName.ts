import { listOf } from '../fields.js';
import { text } from '../guard.js';
import { nearestName as nearestOf } from '../nearestName.js';

/**
 * The known name that a mistyped one is most likely meant to be.
 *
 * Method: the least Levenshtein distance, whatever the case; of up to a third of the known name's letters, and of one letter always.
 *
 * @returns Nothing where no name is near.
 *
 * @example
 * nearestName('limitr', ['limiter', 'leads']) // => 'limiter'
 * nearestName('colour', ['limiter', 'leads']) // => undefined
 */
export function nearestName(typed: string, known: readonly string[]): string | undefined {
  listOf(text)(known, 'known');
  return nearestOf(text(typed, 'typed'), known);
}
