import type { Expectation } from '../expectation/expectation.js';
import type { Movement } from '../movement/followThrottle.js';
import { type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Seconds, Travel, Volts } from '../units.js';
import type { CouldShow } from './score.js';

/** The travel is looked at in so many cells. */
const cells = 50;

/**
 * What a recording could have shown: where the load's rest level hides dropouts, and the narrowest worn spot that
 * surely leaves enough samples on the slowest pass over it. Closings by the spring are too fast to count.
 *
 * @param time Time of each bin of the movement's path.
 * @param shortestDropout The shortest time that surely leaves enough samples.
 */
export function couldShow(
  time: Float64Array,
  movement: Movement,
  expected: Expectation,
  scale: ThrottleScale,
  visible: Volts,
  shortestDropout: Seconds,
): CouldShow {
  const blind = blindStretches(expected, visible);
  const narrowestSpot = narrowest(time, movement, expected, scale, shortestDropout);
  return { blind, ...(narrowestSpot !== undefined && { narrowestSpot }) };
}

function blindStretches(
  { curve, restLevel }: Expectation,
  visible: Volts,
): readonly (readonly [Travel, Travel])[] {
  if (restLevel === undefined) return [[0, 1]];
  const stretches: [Travel, Travel][] = [];
  const excess = (i: number): Volts => Math.abs(curve.volts[i]! - restLevel) - visible;
  for (let i = 1; i < curve.travel.length; i++) {
    const [before, after] = [excess(i - 1), excess(i)];
    if (before >= 0 && after >= 0) continue;
    const [from, to] = [curve.travel[i - 1]!, curve.travel[i]!];
    const border = from + ((to - from) * before) / (before - after);
    const begin = before < 0 ? from : border;
    const end = after < 0 ? to : border;
    const last = stretches[stretches.length - 1];
    if (last && last[1] === begin) last[1] = end;
    else stretches.push([begin, end]);
  }
  return stretches;
}

function narrowest(
  time: Float64Array,
  { path, strokes, snaps, stops }: Movement,
  expected: Expectation,
  scale: ThrottleScale,
  shortestDropout: Seconds,
): Travel | undefined {
  const longest = new Float64Array(cells);
  let bin = 0;
  for (const { start, end } of strokes) {
    if (snaps.some((snap) => snap.start < end && snap.touch > start)) continue;
    const spent = new Float64Array(cells);
    while (bin < time.length && time[bin]! < start) bin++;
    for (; bin + 1 < time.length && time[bin]! < end; bin++) {
      const travel = travelAtLevel(expected, scale, stops, path[bin]!);
      spent[Math.min(cells - 1, Math.floor(travel * cells))]! += time[bin + 1]! - time[bin]!;
    }
    for (let cell = 0; cell < cells; cell++) longest[cell] = Math.max(longest[cell]!, spent[cell]!);
  }
  let width = 0;
  for (const seconds of longest) width = Math.max(width, shortestDropout / seconds / cells);
  return width > 0 && width < 1 ? width : undefined;
}
