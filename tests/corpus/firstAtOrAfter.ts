import type { Seconds } from '@truesweep/core';

/** Index of the first instant not before a moment. */
export function firstAtOrAfter(instant: Float64Array, moment: Seconds): number {
  let [low, high] = [0, instant.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (instant[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}
