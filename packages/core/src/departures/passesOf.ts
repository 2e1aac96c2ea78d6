import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';

/** Departures this far apart in time were on different passes. */
const nextPass: Seconds = 0.3;

/** The departures of each pass. */
export function passesOf(
  place: readonly Departure[],
  time: Float64Array,
): readonly (readonly Departure[])[] {
  const passes: Departure[][] = [];
  let last = -Infinity;
  for (const one of place.toSorted((a, b) => a.from - b.from)) {
    if (time[one.from]! - last > nextPass) passes.push([]);
    passes[passes.length - 1]!.push(one);
    last = time[one.from]!;
  }
  return passes;
}
