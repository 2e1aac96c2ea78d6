import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';
import type { FastMove } from './fastMoves.js';
import type { Levels } from './levels.js';
import { edgeTime, shortestSpring } from './mechanics.js';

/**
 * Takes a step toward the stop that ends where a fast move toward it begins for the beginning of that move, where the samples beside it are too far apart to
 * show the edge of a contact: a fall, a rebound and the rest of it may lie in three samples, or the fall and half of the rebound in a gap.
 */
export function coarseSnaps(
  departures: readonly Departure[],
  fastMoves: readonly FastMove[],
  { time, mean }: Levels,
): { readonly departures: readonly Departure[]; readonly fastMoves: readonly FastMove[] } {
  const beginningOf = ({ start, direction }: FastMove): Departure | undefined =>
    departures.find(
      ({ kind, from, to, depth }) =>
        kind === 'step' &&
        depth < 0 === (direction === 'closing') &&
        to <= start &&
        (start - to <= 1 || time[start - 1]! - time[to]! <= shortestSpring) &&
        longestWait(time, Math.max(1, from), start) > 2 * edgeTime,
    );
  const begun = new Set(fastMoves.map(beginningOf));
  return {
    departures: departures.filter((one) => !begun.has(one)),
    fastMoves: fastMoves.map((move) => {
      const beginning = beginningOf(move);
      if (!beginning) return move;
      const start = Math.max(0, beginning.from - 1);
      return { ...move, start, from: mean[start]! };
    }),
  };
}

/** The longest that one bin of some came after the one before it. */
function longestWait(time: Float64Array, first: number, last: number): Seconds {
  let longest = 0;
  for (let i = first; i <= last; i++) longest = Math.max(longest, time[i]! - time[i - 1]!);
  return longest;
}
