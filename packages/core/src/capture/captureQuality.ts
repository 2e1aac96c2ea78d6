import type { Criteria } from '../criteria.js';
import { upperQuantile } from '../statistics/normalDistribution.js';
import { runningMedian } from '../statistics/runningMedian.js';
import type { Fraction, Seconds, Volts } from '../units.js';
import { type Bins, binned } from './bins.js';
import { type ClipLevels, clipLevels } from './clipLevels.js';
import { type MainsRipple, mainsRipple } from './mainsRipple.js';
import { noiseLevel } from './noiseLevel.js';
import { foundResolution } from './resolution.js';
import { type SampleTimes, sampleTimes } from './sampleTimes.js';
import { chanceToLeave, type Sampling, samplesOver, takenEvery } from './sampling.js';
import { smoothedOver } from './smoothedOver.js';
import type { Sweep } from './sweep.js';
import { asStamped, type TakenStamps } from './takenStamps.js';
import { withoutRipple } from './withoutRipple.js';

/** What is known of the recorder; each field is found from the data or not used when left out. */
export interface Recorder {
  /** Smallest step of its readings, V, 0 or more; found from the data when left out. */
  readonly resolution?: Volts;
  /**
   * Lowest and highest reading that it can show, V, the highest not below the lowest; found from the data where readings stand at an end
   * of it when left out.
   */
  readonly range?: { readonly low: Volts; readonly high: Volts };
  /** Standard uncertainty of a reading, V, 0 or more; when left out, that of an instrument of its kind is assumed. */
  readonly uncertainty?: Volts;
  /** `ac`: a capacitor in its input lets the level sag toward zero; `dc` when left out. */
  readonly coupling?: 'dc' | 'ac';
  /** How it forms a sample; `picked` when left out. */
  readonly sampling?: Sampling;
  /** Interval of the samples that an `interpolated` recording was drawn between, s, above 0; needed with it, and only with it. */
  readonly sampledEvery?: Seconds;
  /**
   * Readings of source and zero with this instrument before the sweep; with those after it they replace the uncertainty. None were taken
   * when left out.
   */
  readonly before?: ReferenceReadings;
  /** The same after the sweep; none were taken when left out. */
  readonly after?: ReferenceReadings;
}

/** What an instrument shows at the source's terminals and with its leads joined, V. */
export interface ReferenceReadings {
  /** At the source's terminals, V, from −10¹² to 10¹². */
  readonly source: Volts;
  /** With the leads joined, V, from −10¹² to 10¹²; 0 of a perfect instrument. */
  readonly zero: Volts;
}

/** How well a recording can show what happened. */
export interface CaptureQuality extends SampleTimes {
  /** How many samples the recording holds, 0 or more. */
  readonly samples: number;
  /** From the first sample to the last, s, 0 or more. */
  readonly duration: Seconds;
  /** How the recorder formed its samples, as told; `interpolated` where lines were found between readings, else `picked`. */
  readonly sampling: Sampling;
  /** The interval of the samples that it took, s, 0 or more; longer than that of the recording where it was drawn between them. */
  readonly sampledEvery: Seconds;
  /** How long its samples were smoothed over, as their noise tells, s, 0 or more; 0 where it does not tell. */
  readonly smoothedOver: Seconds;
  /** How many samples bore a time before that of the one before them, 0 or more. */
  readonly disordered: number;
  /** What was assumed of the stamps. */
  readonly stamps: TakenStamps;
  /** Smallest step of the readings, V, as told or as found, 0 or more. */
  readonly resolution: Volts;
  /** Standard deviation of the noise, V, 0 or more. */
  readonly noise: Volts;
  /** Pick-up from the mains, which was taken out before departures were sought; left out where there is none. */
  readonly ripple?: MainsRipple;
  /** Where the recorder was at the end of its range, as told or as found. */
  readonly clip: ClipLevels;
  /** The smallest departure that counts as visible, V, 0 or more. */
  readonly visible: Volts;
  /** What sets `visible`: the largest of the limits by noise, resolution, span and ripple. */
  readonly visibleSetBy: 'noise' | 'resolution' | 'span' | 'ripple';
  /** The shortest dropout that leaves the wanted number of full samples in evenly spaced ones, s, 0 or more. */
  readonly shortestDropout: Seconds;
  /** Probability, 0 to 1, that a dropout of the criteria's length left one full sample, and the wanted number of samples. */
  readonly dropoutChance: { readonly one: Fraction; readonly wanted: Fraction };
}

/** A recording made ready for judging: its bins, the path that the throttle's movement drew, and its quality. */
export interface PreparedSweep {
  /** Without mains ripple. */
  readonly bins: Bins;
  /** The signal with anything shorter than half the filter's window taken out, V, bin by bin. */
  readonly path: Float64Array;
  /** For how many samples that path lay at either end of the recorder's range. */
  readonly clipped: { readonly low: number; readonly high: number };
  readonly quality: CaptureQuality;
}

/** Half of the running median's window: a departure up to this long does not move the path. */
export const halfWindow: Seconds = 0.05;

/**
 * Measures a recording: sample interval, resolution, noise, mains ripple, and from these the smallest
 * departure that can be told from noise, with k = Φ⁻¹(1 − p/(2n)) standard deviations for n samples.
 */
export function prepareSweep(
  sweep: Sweep,
  span: Volts,
  recorder: Recorder,
  criteria: Criteria,
  { disordered, stamps }: Pick<CaptureQuality, 'disordered' | 'stamps'> = {
    disordered: 0,
    stamps: asStamped,
  },
): PreparedSweep {
  const samples = sweep.time.length;
  const duration = sweep.time[samples - 1]! - sweep.time[0]!;
  const times = sampleTimes(sweep.time);
  const { interval } = times;
  const resolution = recorder.resolution ?? foundResolution(sweep.signal);
  const roughly = noiseLevel(sweep.signal, interval, resolution);
  const clip = recorder.range ?? clipLevels(sweep.signal, roughly, resolution);
  const scatter = noiseLevel(sweep.signal, interval, resolution, undefined, clip);
  const bins = binned(sweep, interval);
  const path = runningMedian(bins.mean, Math.max(1, Math.round(halfWindow / bins.interval)));
  const ripple = mainsRipple(bins, path, scatter);
  const noise = ripple ? noiseLevel(sweep.signal, interval, resolution, ripple, clip) : scatter;
  const k = upperQuantile(criteria.falseDepartures / (2 * samples));
  const limits = [
    ['span', criteria.visibleSpan * Math.abs(span)],
    ['noise', k * noise],
    ['resolution', criteria.visibleSteps * resolution],
    ['ripple', criteria.visibleRipple * (ripple?.volts ?? 0)],
  ] as const;
  const { sampling = 'picked' } = recorder;
  const sampledEvery = takenEvery(interval, recorder);
  const smoothed = smoothedOver(sweep.signal, interval, resolution);
  const every = Math.max(sampledEvery, smoothed);
  const chanceOf = (wanted: number): Fraction =>
    chanceToLeave(samplesOver(wanted, sampling), criteria.dropout, sweep.time, times, every);
  const [visibleSetBy, visible] = limits.reduce((most, one) => (one[1] > most[1] ? one : most));
  const quality: CaptureQuality = {
    samples,
    duration,
    ...times,
    sampling,
    sampledEvery,
    smoothedOver: smoothed,
    disordered,
    stamps,
    resolution,
    noise,
    ...(ripple && { ripple }),
    clip,
    visible,
    visibleSetBy,
    shortestDropout: samplesOver(criteria.samplesInDropout, sampling) * every,
    dropoutChance: { one: chanceOf(1), wanted: chanceOf(criteria.samplesInDropout) },
  };
  return {
    bins: ripple ? withoutRipple(bins, path, ripple.hertz) : bins,
    path,
    clipped: clippedSamples(path, bins.samplesPerBin, quality),
    quality,
  };
}

function clippedSamples(
  path: Float64Array,
  samplesPerBin: number,
  { clip: { low = -Infinity, high = Infinity }, resolution, noise }: CaptureQuality,
): PreparedSweep['clipped'] {
  const near = resolution + noise / 2;
  const clipped = { low: 0, high: 0 };
  for (const volts of path) {
    if (volts >= high - near) clipped.high += samplesPerBin;
    if (volts <= low + near) clipped.low += samplesPerBin;
  }
  return clipped;
}
