import type { Fraction, Seconds } from '../units.js';
import type { Recorder } from './captureQuality.js';
import { chanceOfSamples } from './chanceOfSamples.js';
import type { SampleTimes } from './sampleTimes.js';

/**
 * How a recorder forms a sample: `picked` at a moment; `averaged` over its interval; `peak-kept`, the extreme of its
 * interval; `interpolated`, drawn between fewer ones that it took.
 */
export type Sampling = 'picked' | 'averaged' | 'peak-kept' | 'interpolated';

/**
 * How many samples in a row a dropout must reach over to leave some in full: an average needs its whole interval in it and
 * so loses the first, an extreme is kept of an interval that it only touches.
 */
export function samplesOver(wanted: number, sampling: Sampling = 'picked'): number {
  const more = { picked: 0, averaged: 1, 'peak-kept': -1, interpolated: 0 };
  return wanted + more[sampling];
}

/** The interval of the samples that a recorder took, s: a wider one than its stamps' where it drew more between them. */
export function takenEvery(interval: Seconds, { sampling, sampledEvery }: Recorder): Seconds {
  return sampling === 'interpolated' ? Math.max(interval, sampledEvery!) : interval;
}

/**
 * The probability that a dropout anywhere in a recording reaches over a number of samples.
 *
 * @param every Interval of the samples that tell something of their own, s.
 */
export function chanceToLeave(
  samples: number,
  seconds: Seconds,
  time: Float64Array,
  { longestGap, interval }: SampleTimes,
  every: Seconds,
): Fraction {
  if (samples === 0) return 1;
  const asStamped = samples * longestGap <= seconds ? 1 : chanceOfSamples(time, seconds, samples);
  if (every <= interval) return asStamped;
  return Math.min(asStamped, Math.max(0, seconds / every - samples + 1));
}
