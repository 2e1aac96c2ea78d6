import type { Finding, Fraction } from '@truesweep/core';

/**
 * How far the deepest rough patch leads from the path, as a fraction of the span between the closed and the open reading; 0 where there is none.
 *
 * @param findings Of a score.
 *
 * @example
 * roughness([{ kind: 'rough', depthOfSpan: 0.06 }, { kind: 'dropout', depthOfSpan: 0.9 }]) // => 0.06
 */
export function roughness(findings: readonly Finding[]): Fraction {
  return findings.reduce(
    (most, { kind, depthOfSpan }) => (kind === 'rough' ? Math.max(most, depthOfSpan) : most),
    0,
  );
}
