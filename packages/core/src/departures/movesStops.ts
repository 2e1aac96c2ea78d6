import type { Stroke } from '../movement/movement.js';
import type { Seconds } from '../units.js';

/** The stops are read anew within this part of a rotor's slip. */
const ofSlip = 0.25;

/**
 * Whether a stop is read as much farther on after a jump as the jump leads: a rotor slipped.
 *
 * @param when The jump's time, and `depth` how far it leads.
 */
export function movesStops(
  strokes: readonly Stroke[],
  when: Seconds,
  depth: number,
  visible: number,
): boolean {
  const before = strokes.flatMap(({ start, end, from, to }) =>
    end <= when ? [from, to] : start < when ? [from] : [],
  );
  const after = strokes.flatMap(({ start, end, from, to }) =>
    start >= when ? [from, to] : end > when ? [to] : [],
  );
  if (before.length === 0 || after.length === 0) return false;
  const near = Math.min(Math.max(visible, ofSlip * Math.abs(depth)), Math.abs(depth) / 2);
  const isMoved = (most: (...levels: number[]) => number): boolean =>
    Math.abs(most(...after) - most(...before) - depth) < near;
  return isMoved(Math.max) || isMoved(Math.min);
}
