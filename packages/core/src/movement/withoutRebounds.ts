import { firstAt } from './firstAt.js';
import type { SnapClosing } from './movement.js';

/** Flattens the rebounds of each snap, in place, to where they settled: they are no movement of the hand. */
export function withoutRebounds(
  path: Float64Array,
  time: Float64Array,
  snaps: readonly SnapClosing[],
): Float64Array {
  for (const { touch, settled } of snaps) {
    const to = firstAt(time, settled);
    path.fill(path[to]!, firstAt(time, touch), to);
  }
  return path;
}
