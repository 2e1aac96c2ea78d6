import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';
import { lineAcross } from './lineAcross.js';
import { passesOf } from './passesOf.js';
import { onePlace } from './placesOf.js';
import { sidesOfLine } from './sidesOfLine.js';

/** A hand hardly leaves a straight line within this time. */
const longestPass: Seconds = 0.5;
/** Scatter leaves a straight line to both sides; so little of what a contact does goes to the other. */
const otherSide = 0.05;
/** So many passes toward the rest level alone tell, of which this part does; a slow hand bends the others. */
const fewestPasses = 3;
const mostPasses = 0.65;

/**
 * Whether a contact is lifted at a place: on its passes the recording leaves the straight line over the place toward
 * the load's rest level alone. The path itself can't tell where the contact is lifted most of the time, as it then
 * follows the lifted level for a while and the returns leave it to the other side.
 */
export function liftsThere(
  levels: Levels,
  path: Float64Array,
  place: readonly Departure[],
): boolean {
  const { time, rest } = levels;
  const ends = place.flatMap(({ from, to }) => [path[from]!, path[to]!]);
  const low = ends.reduce((least, level) => Math.min(least, level)) - onePlace;
  const high = ends.reduce((most, level) => Math.max(most, level)) + onePlace;
  const isThere = (bin: number): boolean => path[bin]! > low && path[bin]! < high;
  const sides = passesOf(place, time).flatMap((pass) => {
    let from = pass[0]!.from;
    let to = pass.reduce((last, one) => Math.max(last, one.to), from);
    const first = firstAt(time, time[to]! - longestPass);
    const last = firstAt(time, time[from]! + longestPass);
    while (from > first && isThere(from)) from--;
    while (to < last && isThere(to)) to++;
    const line = isThere(from) || isThere(to) ? undefined : lineAcross(levels, from, to);
    return line ? sidesOfLine(levels, from, to, line) : [];
  });
  const goes = (lesser: number, greater: number): boolean =>
    greater > 0 && lesser <= otherSide * greater;
  const down = sides.filter(({ below, above }) => goes(above, below)).length;
  const up = sides.filter(({ below, above }) => goes(below, above)).length;
  // A path that follows the lifted level has the rest level among those of the place; then either side may be its.
  const mayGoDown = rest === undefined || rest <= high;
  const mayGoUp = rest === undefined || rest >= low;
  const most = Math.max(mayGoDown ? down : 0, mayGoUp ? up : 0);
  return most >= Math.max(fewestPasses, mostPasses * sides.length);
}
