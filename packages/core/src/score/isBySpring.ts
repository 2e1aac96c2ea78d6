import type { SnapClosing, Stroke } from './score.js';

/** Whether the spring drove a stroke: so fast that it may well miss a spot. */
export function isBySpring(
  { direction, start, end }: Pick<Stroke, 'direction' | 'start' | 'end'>,
  snaps: readonly Pick<SnapClosing, 'start' | 'touch'>[],
): boolean {
  return direction === 'closing' && snaps.some((snap) => snap.start < end && snap.touch > start);
}
