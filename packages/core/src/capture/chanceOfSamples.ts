import { timeColumn } from '../column.js';
import { positive, wholeNumber } from '../guard.js';
import type { Fraction, Seconds } from '../units.js';

/**
 * The probability that a stretch of time, beginning anywhere in a recording, holds a number of samples: that a dropout
 * of that length would have left as many. Exact for any sampling, gaps and jitter included.
 *
 * @param times Times of the samples, s, never decreasing.
 * @param seconds Length of the stretch, s, above 0.
 * @param samples How many samples it shall hold, 1 to 1,000; 1 when left out.
 * @throws InputError for a length or a number out of range.
 *
 * @example
 * const time = Float64Array.of(0, 0.25, 0.5, 0.75);
 * chanceOfSamples(time, 0.125) // => 0.5
 * chanceOfSamples(time, 0.5, 2) // => 1
 */
export function chanceOfSamples(times: ArrayLike<number>, seconds: Seconds, samples = 1): Fraction {
  const time = timeColumn(times, 'times');
  positive(seconds, 'seconds', 's');
  wholeNumber(samples, 1, 1000, 'samples');
  const last = time.length - samples;
  const span = last < 1 ? 0 : time[last]! - time[0]!;
  if (span === 0) return 0;
  let good = 0;
  for (let i = 1; i <= last; i++) {
    const latest = time[i]!;
    const earliest = Math.max(time[i - 1]!, time[i + samples - 1]! - seconds);
    if (earliest < latest) good += latest - earliest;
  }
  return Math.min(1, good / span);
}
