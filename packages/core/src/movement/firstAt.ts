import type { Seconds } from '../units.js';

/** The first bin at or after a time, or the last one. */
export function firstAt(time: Float64Array, when: Seconds): number {
  let low = 0;
  let high = time.length - 1;
  while (low < high) {
    const halfway = (low + high) >> 1;
    if (time[halfway]! < when) low = halfway + 1;
    else high = halfway;
  }
  return low;
}
