import type { Departure } from './departure.js';
import { isJump } from './isJump.js';

/** So many departures make a rough place, this part of their depths together to the lesser side. */
const fewestRough = 4;
const fewestOnLesserSide = 2;
const lesserSide = 0.12;
/** A place is what this part of its departures are. */
export const majority = 0.6;

/** Whether the departures of a place scatter both ways over several passes. */
export function isRough(place: readonly Departure[], passes: number): boolean {
  if (passes < 2) return false;
  const jumps = place.filter(({ kind }) => isJump(kind));
  if (2 * jumps.length > place.length) return false;
  const mostDropouts =
    place.filter(({ kind }) => kind === 'dropout').length >= majority * place.length;
  if (!mostDropouts && place.filter(({ kind }) => kind === 'rough').length >= 2) return true;
  const up = place.filter(({ depth }) => depth > 0).length;
  const onLesserSide = Math.min(up, place.length - up);
  if (place.length < fewestRough || onLesserSide < fewestOnLesserSide) return false;
  return lesserPart(place) >= lesserSide;
}

/** What goes to the lesser side, as a part of the other. */
function lesserPart(place: readonly Departure[]): number {
  let [above, below] = [0, 0];
  for (const { depth } of place) {
    if (depth > 0) above += depth;
    else below -= depth;
  }
  return Math.min(above, below) / Math.max(above, below);
}
