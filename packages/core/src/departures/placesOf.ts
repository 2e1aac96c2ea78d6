import { chainsOf } from './chainsOf.js';
import type { Departure } from './departure.js';
import { isJump } from './isJump.js';

/** Departures this close in level are at one place of the track. */
export const onePlace = 0.02;

/** Departures in chains by their level; a jump's is its lower one, whichever way it was gone over. */
export function placesOf(
  path: Float64Array,
  departures: readonly Departure[],
  gap: number = onePlace,
): readonly Departure[][] {
  const levelOf = ({ kind, from, to }: Departure): number =>
    isJump(kind) ? Math.min(path[from]!, path[to]!) : path[from]!;
  return chainsOf(departures, levelOf, gap);
}
