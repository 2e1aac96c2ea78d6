import { firstAt } from './firstAt.js';
import type { SnapClosing } from './movement.js';

/** The path with the rebounds of each snap flattened to where they settled: they are no movement of the hand. */
export function withoutRebounds(
  path: Float64Array,
  time: Float64Array,
  snaps: readonly SnapClosing[],
): Float64Array {
  const flat = Float64Array.from(path);
  for (const { touch, settled } of snaps) {
    const to = firstAt(time, settled);
    flat.fill(path[to]!, firstAt(time, touch), to);
  }
  return flat;
}
