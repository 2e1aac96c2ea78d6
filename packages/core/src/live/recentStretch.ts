import { firstAt } from '../movement/firstAt.js';
import type { Seconds } from '../units.js';

/** Long enough for a stroke both ways. */
const longest: Seconds = 4;
/** A stretch holds no more samples than this. */
export const mostSamples = 2 ** 19;

/** Where the recent stretch begins that a provisional judgement looks at: the last 4 s when left out, at most 524,288 samples. */
export function recentStretch(time: Float64Array, seconds: Seconds = longest): number {
  const count = time.length;
  if (count === 0) return 0;
  return Math.max(firstAt(time, time[count - 1]! - seconds), count - mostSamples);
}
