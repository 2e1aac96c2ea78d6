import type { Finding, Fraction } from '@truesweep/core';

/** How far the deepest rough patch leads from the path, a fraction of the span; 0 where there is none. */
export function roughness(findings: readonly Finding[]): Fraction {
  return findings.reduce(
    (most, { kind, depthOfSpan }) => (kind === 'rough' ? Math.max(most, depthOfSpan) : most),
    0,
  );
}
