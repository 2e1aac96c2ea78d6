import type { Levels } from '../movement/levels.js';
import type { Excursion } from './departure.js';

/** Pieces of one event lie no farther apart than this. */
const joinedWithin = 6e-3;

/**
 * The stretches in which the recording's extremes leave a path by more than the visible departure. Stretches a few
 * milliseconds apart are one.
 *
 * @param path Level of the path, bin by bin.
 */
export function findExcursions(levels: Levels, path: Float64Array): readonly Excursion[] {
  const bridge = Math.max(1, Math.round(joinedWithin / levels.interval));
  const least = levels.visible * (1 + 1e-9);
  const found: Excursion[] = [];
  for (let i = 0; i < path.length; i++) {
    if (!leaves(levels, path, i, least)) continue;
    const from = i;
    let to = i;
    let [below, above, level, swings, side] = [0, 0, path[i]!, 0, 0];
    for (; i < path.length && i - to <= bridge; i++) {
      if (!leaves(levels, path, i, least)) continue;
      to = i;
      const departure = departureAt(levels, path, i);
      if (Math.abs(departure) > Math.max(-below, above)) level = path[i]!;
      below = Math.min(below, departure);
      above = Math.max(above, departure);
      if (side !== 0 && Math.sign(departure) !== side) swings++;
      side = Math.sign(departure);
    }
    i = to;
    found.push({ from, to, below, above, level, swings });
  }
  return found;
}

function leaves(levels: Levels, path: Float64Array, i: number, least: number): boolean {
  return Math.abs(departureAt(levels, path, i)) > least;
}

/** How far a bin's extremes lie outside what the path covers within the bin; the farther side counts. */
export function departureAt(
  { low, high, withinBin }: Levels,
  path: Float64Array,
  i: number,
): number {
  const here = path[i]!;
  const before = here + withinBin * (path[Math.max(0, i - 1)]! - here);
  const after = here + withinBin * (path[Math.min(path.length - 1, i + 1)]! - here);
  const below = Math.min(0, low[i]! - Math.min(before, here, after));
  const above = Math.max(0, high[i]! - Math.max(before, here, after));
  return -below > above ? below : above;
}
