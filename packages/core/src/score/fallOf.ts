import type { SnapClosing, Stroke } from './score.js';

/** The fall by the spring that a stroke was, wholly or in part; so fast that it may well miss a spot. Undefined for one by hand. */
export function fallOf<Fall extends Pick<SnapClosing, 'start' | 'touch'>>(
  { direction, start, end }: Pick<Stroke, 'direction' | 'start' | 'end'>,
  snaps: readonly Fall[],
): Fall | undefined {
  if (direction === 'opening') return undefined;
  return snaps.find((snap) => snap.start < end && snap.touch > start);
}
