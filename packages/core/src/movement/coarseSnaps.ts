import type { Departure } from './departure.js';
import type { FastMove } from './fastMoves.js';
import type { Levels } from './levels.js';
import { edgeTime } from './mechanics.js';

/**
 * Takes a step toward the stop that ends where a fast move toward it begins for the beginning of that move, where samples are too far apart to show the edge
 * of a contact: a fall, a rebound and the rest of it may then lie in three samples.
 */
export function coarseSnaps(
  departures: readonly Departure[],
  fastMoves: readonly FastMove[],
  { interval, mean }: Levels,
): { readonly departures: readonly Departure[]; readonly fastMoves: readonly FastMove[] } {
  if (interval <= 2 * edgeTime) return { departures, fastMoves };
  const beginningOf = ({ start, direction }: FastMove): Departure | undefined =>
    departures.find(
      ({ kind, to, depth }) =>
        kind === 'step' &&
        depth < 0 === (direction === 'closing') &&
        to <= start &&
        start - to <= 1,
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
