import { firstAt } from '../movement/firstAt.js';
import type { Stroke } from '../movement/movement.js';
import type { Departure } from './departure.js';
import { onePlace } from './placesOf.js';

/** So many passes over a place without a sign of it say that what shows there is not the track's. */
export const fewestClear = 2;

/** How many slow strokes go over the levels that a departure leads between, and on, and show nothing there. */
export function clearPasses(
  place: Departure,
  departures: readonly Departure[],
  strokes: readonly Stroke[],
  time: Float64Array,
  path: Float64Array,
  fast: Uint8Array,
): number {
  const ends = ({ from, to }: Departure): readonly [number, number] =>
    path[from]! < path[to]! ? [path[from]!, path[to]!] : [path[to]!, path[from]!];
  const [low, high] = [ends(place)[0] - onePlace, ends(place)[1] + onePlace];
  const there = departures.filter((one) => ends(one)[0] < high && ends(one)[1] > low);
  return strokes.filter(({ start, end, from, to }) => {
    if (Math.min(from, to) > low || Math.max(from, to) < high) return false;
    if (there.some((one) => start <= time[one.to]! && end >= time[one.from]!)) return false;
    return !fast.subarray(firstAt(time, start), firstAt(time, end)).includes(1);
  }).length;
}
