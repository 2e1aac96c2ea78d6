import type { TroubleKind } from '@truesweep/core';
import { texts } from './rules.js';
import { say } from './say.js';

/**
 * What a standard trouble code says of a position sensor, in our own words.
 *
 * @example
 * troubleMeanings.low // => 'signal too low'
 */
export const troubleMeanings: Readonly<Record<TroubleKind, string>> = {
  range: 'signal does not fit the other readings',
  low: 'signal too low',
  high: 'signal too high',
  intermittent: 'signal comes and goes',
};

/**
 * Which trouble codes such a fault could set.
 *
 * @param codes Code and meaning of each, such as `P0122 (signal too low)`.
 *
 * @example
 * troubleCodesSentence(['P0122 (signal too low)']).startsWith('Such a fault can set P0122') // => true
 */
export function troubleCodesSentence(codes: readonly string[]): string {
  texts(codes, 'codes');
  return say`Such a fault can set ${codes.join(', ')}. These are the codes of road vehicles; the machine at hand may use its own.`;
}
