import type { Check } from '@truesweep/core';
import type { NearestLimit } from './judgedRecording.js';

/** The check with the least margin in proportion to its limits; the first of several. */
export function nearestLimit(checks: readonly Check[]): NearestLimit | undefined {
  let nearest: NearestLimit | undefined;
  for (const check of checks) {
    const margin = partOfLimits(check);
    if (margin === undefined || (nearest && nearest.margin <= margin)) continue;
    nearest = { check: check.check, margin };
  }
  return nearest;
}

/** A margin as a part of what it could be at most; of a limit at zero, which has no such part, only what lies beyond it, in its unit. */
function partOfLimits({ outcome, margin, lowLimit, highLimit }: Check): number | undefined {
  if (margin === undefined || outcome === 'not-judged') return undefined;
  const room =
    lowLimit !== undefined && highLimit !== undefined
      ? (highLimit - lowLimit) / 2
      : Math.abs(lowLimit ?? highLimit ?? 0);
  if (room > 0) return margin / room;
  return margin < 0 ? margin : undefined;
}
