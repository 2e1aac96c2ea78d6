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

/** Mechanics move nothing much within a quarter of a millisecond; the extremes of a bin still keep each single sample. */
const binLength: Seconds = 0.25e-3;

/**
 * Takes the samples of a sweep together in bins of about a quarter of a millisecond, or leaves them single where
 * they are farther apart: then the bins are the sweep's own arrays. A bin ends at a gap in the recording.
 */
export function binned({ time, signal }: Sweep, interval: Seconds): Bins {
  const samplesPerBin = Math.max(1, Math.floor(binLength / interval));
  if (samplesPerBin === 1) {
    return { samplesPerBin, interval, time, mean: signal, low: signal, high: signal };
  }
  const gap = 2 * samplesPerBin * interval;
  const count = countBins(time, samplesPerBin, gap);
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
    const to = binEnd(time, from, samplesPerBin, gap);
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

function countBins(time: Float64Array, most: number, gap: Seconds): number {
  let count = 0;
  for (let from = 0; from < time.length; from = binEnd(time, from, most, gap)) count++;
  return count;
}

/** After the last sample of the bin that begins with a sample. */
function binEnd(time: Float64Array, from: number, most: number, gap: Seconds): number {
  const last = Math.min(from + most, time.length);
  let to = from + 1;
  while (to < last && time[to]! - time[to - 1]! <= gap) to++;
  return to;
}
