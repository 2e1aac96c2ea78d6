import { texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Headings and short words of a printed score.
 *
 * @example
 * scoreLabels.next // => 'Next'
 */
export const scoreLabels = {
  limits: 'Limits',
  sure: 'How sure',
  cause: 'Cause',
  next: 'Next',
  findings: 'Findings',
  abrupt: 'Abrupt',
  checks: 'Checks',
  movement: 'Movement',
  file: 'File',
  seen: 'Seen',
  couldShow: 'Could show',
  places: 'Places',
  codes: 'Codes',
  tests: 'Tests',
  stamps: 'Stamps',
  assumed: 'Assumed',
  kind: 'kind',
  travel: 'travel',
  unplaced: 'unknown',
  at: 'at',
  lasts: 'lasts',
  depth: 'depth',
  ofSpan: 'of span',
  during: 'during',
  measured: 'measured',
  limit: 'limit',
  margin: 'margin',
  outcome: 'outcome',
  cautions: 'Before you connect or refit anything',
} as const satisfies Record<string, string>;

/**
 * Said where more findings were made than are listed.
 *
 * @example
 * moreFindingsSentence(4) // => 'and 4 more; --json lists them all'
 */
export function moreFindingsSentence(count: number): string {
  return say`and ${count} more; --json lists them all`;
}

/**
 * Where the limits of a table of checks came from.
 *
 * @param named The checks whose limits have a source of their own; the limits of the others are criteria.
 *
 * @example
 * const named = [{ checks: ['closed reading'], source: "the hook-up's expected windows" }];
 * limitsSentence(named).startsWith("Limits: closed reading from the hook-up's expected windows;") // => true
 */
export function limitsSentence(
  named: readonly { readonly checks: readonly string[]; readonly source: string }[],
): string {
  return whole(named, 'named', () => {
    const parts = named.map(({ checks, source }, i) => {
      texts(checks, `named[${i}].checks`);
      return say`${checks.join(' and ')} from ${source}; `;
    });
    const rest = parts.length > 0 ? 'the others are criteria' : 'all are criteria';
    return say`Limits: ${parts.join('')}${rest}. ± is twice the standard uncertainty.`;
  });
}
