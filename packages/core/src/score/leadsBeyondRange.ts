import type { Departure } from '../departures/departure.js';
import type { Levels } from '../movement/levels.js';

/**
 * Whether a step leads from or to an end of the recorder's range that hides a part of the travel: the throttle moved beyond it unseen, so that the
 * signal leaves it, or comes to it, at any speed.
 */
export function leadsBeyondRange(
  { kind, from, to }: Pick<Departure, 'kind' | 'from' | 'to'>,
  { mean, visible, clip }: Pick<Levels, 'mean' | 'visible' | 'clip'>,
): boolean {
  const isAtEnd = (level: number): boolean =>
    (clip.low > 0 && level <= clip.low + visible) ||
    (clip.high < 1 && level >= clip.high - visible);
  const before = mean[Math.max(0, from - 1)]!;
  const after = mean[Math.min(mean.length - 1, to + 1)]!;
  return kind === 'step' && (isAtEnd(before) || isAtEnd(after));
}
