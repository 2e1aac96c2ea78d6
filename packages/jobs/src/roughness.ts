import { checkScore, type Fraction, type Score } from '@truesweep/core';

/**
 * How far the deepest rough patch leads from the path, as a fraction of the span between the closed and the open reading; 0 where there is none.
 *
 * @param score Of which the findings are looked at.
 *
 * @example
 * roughness({ findings: [] }) // => 0
 */
export function roughness(score: Pick<Score, 'findings'>): Fraction {
  checkScore(score, 'score', ['findings']);
  return score.findings.reduce(
    (most, { kind, depthOfSpan }) => (kind === 'rough' ? Math.max(most, depthOfSpan) : most),
    0,
  );
}
