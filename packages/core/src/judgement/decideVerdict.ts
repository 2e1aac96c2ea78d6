import type { CheckOutcome, Verdict } from '../score/score.js';

/**
 * The verdict from the checks: a failure outweighs all, a marginal result outweighs a poor recording, and
 * only if each check conforms (or needs no judging) is it a pass.
 */
export function decideVerdict(checks: readonly { readonly outcome: CheckOutcome }[]): Verdict {
  const any = (outcome: CheckOutcome): boolean => checks.some((check) => check.outcome === outcome);
  if (any('fails')) return 'fail';
  if (any('marginal')) return 'marginal';
  const good = checks.every(({ outcome }) => outcome === 'conforms' || outcome === 'not-judged');
  return good && checks.length > 0 ? 'pass' : 'inconclusive';
}
