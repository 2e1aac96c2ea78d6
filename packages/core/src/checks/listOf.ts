import { type FieldRule, listOf as listByRule } from '../fields.js';
import { text, wholeNumber } from '../guard.js';
import { checkRule } from './checkRule.js';

/** The longest list that there can be. */
const longest = 2 ** 32 - 1;

/**
 * A rule of {@link checkFields} for lists of so many entries that all follow one rule.
 *
 * @param rule For each entry.
 * @param least How many there must be; none when left out.
 * @param most How many there may be; 100,000 when left out.
 * @returns A rule that throws InputError `missing`, `not-a-list`, `out-of-range`, or what the entries' rule throws.
 *
 * @example
 * let path;
 * try {
 *   checkFields({ pair: ['a', 'd'] }, 'it', { pair: listOf(['a', 'b'], 2, 2) });
 * } catch (error) {
 *   path = error.path;
 * }
 * path // => 'it.pair[1]'
 */
export function listOf(
  rule: FieldRule,
  least = 0,
  most = 1e5,
): (value: unknown, path: string) => void {
  checkRule(rule, 'rule');
  const check = listByRule(
    rule,
    wholeNumber(least, 0, longest, 'least'),
    wholeNumber(most, 0, longest, 'most'),
  );
  return (value, path) => check(value, text(path, 'path'));
}
