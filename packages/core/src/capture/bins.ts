import type { Seconds, Volts } from '../units.js';
import type { Sweep } from './sweep.js';

/** Neighbouring samples taken together: middle time, mean, lowest and highest of each bin. */
export interface Bins {
  readonly samplesPerBin: number;
  readonly interval: Seconds;
  readonly time: Float64Array;
  readonly mean: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** Mechanics move nothing within half a millisecond; the extremes of a bin still keep each single sample. */
const binLength: Seconds = 0.5e-3;

/**
 * Takes the samples of a sweep together in bins of about half a millisecond, or leaves them single where
 * they are farther apart. A bin ends at a gap in the recording.
 */
export function binned(sweep: Sweep, interval: Seconds): Bins {
  const samplesPerBin = Math.max(1, Math.floor(binLength / interval));
  const { time, signal } = sweep;
  const ends = binEnds(time, samplesPerBin, interval);
  const count = ends.length;
  const bins = {
    samplesPerBin,
    interval: interval * samplesPerBin,
    time: new Float64Array(count),
    mean: new Float64Array(count),
    low: new Float64Array(count),
    high: new Float64Array(count),
  };
  let from = 0;
  for (let bin = 0; bin < count; bin++) {
    const to = ends[bin]!;
    let sum = 0;
    let low: Volts = signal[from]!;
    let high: Volts = low;
    for (let i = from; i < to; i++) {
      const volts = signal[i]!;
      sum += volts;
      if (volts < low) low = volts;
      if (volts > high) high = volts;
    }
    bins.time[bin] = (time[from]! + time[to - 1]!) / 2;
    bins.mean[bin] = sum / (to - from);
    bins.low[bin] = low;
    bins.high[bin] = high;
    from = to;
  }
  return bins;
}

/** After the last sample of each bin. */
function binEnds(time: Float64Array, samplesPerBin: number, interval: Seconds): Uint32Array {
  const gap = 2 * samplesPerBin * interval;
  const ends = new Uint32Array(time.length);
  let count = 0;
  let from = 0;
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && i - from < samplesPerBin && time[i]! - time[i - 1]! <= gap) continue;
    ends[count++] = i;
    from = i;
  }
  return ends.slice(0, count);
}
