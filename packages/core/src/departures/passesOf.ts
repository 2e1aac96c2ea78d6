import type { Seconds } from '../units.js';
import type { Span } from './departure.js';

/** Departures this far apart in time were on different passes. */
const nextPass: Seconds = 0.3;

/** The departures of each pass. */
export function passesOf<T extends Span>(
  place: readonly T[],
  time: Float64Array,
): readonly (readonly T[])[] {
  const passes: T[][] = [];
  let last = -Infinity;
  for (const one of place.toSorted((a, b) => a.from - b.from)) {
    if (time[one.from]! - last > nextPass) passes.push([]);
    passes[passes.length - 1]!.push(one);
    last = time[one.from]!;
  }
  return passes;
}
