import type { Departure } from './departure.js';
import { isJump } from './isJump.js';
import { passesOf } from './passesOf.js';
import { placesOf } from './placesOf.js';

/** So many departures make a rough place, this part of their depths together to the lesser side. */
const fewestRough = 4;
const fewestOnLesserSide = 2;
const lesserSide = 0.12;
/** Pulses of one wide place lie no farther apart, are this part of all, and by chance together this rarely at the most. */
const withinWide = 0.08;
const mostOfAll = 0.8;
const rare = 0.01;
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

/**
 * A place that scatters so little that only some of it is visible shows as pulses here and there over its whole width: those
 * of all passes together tell it, where they are too many for chance and most of a recording's.
 */
export function wideRoughPlace(
  path: Float64Array,
  time: Float64Array,
  departures: readonly Departure[],
): readonly Departure[][] {
  const pulses = departures.filter(({ kind }) => !isJump(kind));
  return placesOf(path, pulses, withinWide).filter((place) => {
    const [first, last] = [place[0]!, place[place.length - 1]!];
    const width = path[last.from]! - path[first.from]!;
    // That all lie so close together: the chance of it for each to be the lowest.
    const byChance = place.length * width ** (place.length - 1);
    return (
      place.length >= mostOfAll * pulses.length &&
      byChance < rare &&
      isRough(place, passesOf(place, time).length)
    );
  });
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
