import type { Seconds, Travel } from '@truesweep/core';

/** One time that a fault was there: a passage of the wiper over its place, a burst, a jump. */
export interface Passage {
  /** Which fault of the plan. */
  readonly fault: number;
  readonly start: Seconds;
  readonly end: Seconds;
  /** Stretch of travel that the throttle went over meanwhile. */
  readonly from: Travel;
  readonly to: Travel;
}

/** Passages of one fault no farther apart than a time count as one. */
export function joinPassages(passages: readonly Passage[], apart: Seconds): readonly Passage[] {
  const joined: Passage[] = [];
  for (const next of passages) {
    const last = joined.at(-1);
    if (!last || last.fault !== next.fault || next.start - last.end > apart) {
      joined.push(next);
      continue;
    }
    joined[joined.length - 1] = {
      ...last,
      end: Math.max(last.end, next.end),
      from: Math.min(last.from, next.from),
      to: Math.max(last.to, next.to),
    };
  }
  return joined;
}
