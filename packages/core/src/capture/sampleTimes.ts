import { median } from '../statistics/median.js';
import type { Seconds } from '../units.js';
import { gapIntervals, strideOver } from './limits.js';

/** When a recorder took its samples. */
export interface SampleTimes {
  /** Middle value of the times between samples, s, 0 or more. */
  readonly interval: Seconds;
  /** Standard deviation of those times, gaps apart, s, 0 or more. */
  readonly jitter: Seconds;
  /** The longest time between two samples, s, 0 or more. */
  readonly longestGap: Seconds;
  /** How many of the times between samples are longer than three intervals, 0 or more. */
  readonly gaps: number;
  /** How many samples bear the time of the one before, 0 or more. */
  readonly repeated: number;
}

/** Measures the times between the samples of a recording, which never decrease. */
export function sampleTimes(time: Float64Array): SampleTimes {
  const stride = strideOver(time.length);
  const some: number[] = [];
  for (let i = stride; i < time.length; i += stride) {
    const gap = time[i]! - time[i - 1]!;
    if (gap !== 0) some.push(gap);
  }
  const usual = median(Float64Array.from(some));
  const duration = time[time.length - 1]! - time[0]!;
  const interval = some.length > 0 ? usual : duration / (time.length - 1);
  let longestGap = 0;
  let repeated = 0;
  let gaps = 0;
  let squares = 0;
  let sum = 0;
  let counted = 0;
  for (let i = 1; i < time.length; i++) {
    const gap = time[i]! - time[i - 1]!;
    if (gap > longestGap) longestGap = gap;
    if (gap === 0) repeated++;
    else if (gap > gapIntervals * interval) gaps++;
    else {
      squares += (gap - interval) ** 2;
      sum += gap - interval;
      counted++;
    }
  }
  const count = Math.max(1, counted);
  const jitter = Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
  return { interval, jitter, longestGap, gaps, repeated };
}
