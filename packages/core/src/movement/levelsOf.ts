import type { PreparedSweep } from '../capture/captureQuality.js';
import type { Levels } from './levels.js';
import { findRests, restBand } from './movement.js';
import { onScale, type ThrottleScale } from './throttleScale.js';

/** A recording on the scale of the throttle; a falling sensor's lowest volts are its highest level. */
export function levelsOf(
  { bins, path, quality }: Pick<PreparedSweep, 'bins' | 'path' | 'quality'>,
  scale: ThrottleScale,
): Levels {
  const level = (volts: number): number => onScale(scale, volts);
  const span = Math.abs(scale.span);
  const visible = quality.visible / span;
  const { low: least = -Infinity, high: most = Infinity } = quality.clip;
  const mean = bins.mean.map(level);
  const [low, high] = scale.span > 0 ? [bins.low, bins.high] : [bins.high, bins.low];
  // Bins of one sample have one value, and one array for it.
  const single = bins.low === bins.mean && bins.high === bins.mean;
  return {
    time: bins.time,
    interval: bins.interval,
    withinBin: (bins.samplesPerBin - 1) / (2 * bins.samplesPerBin),
    mean,
    low: single ? mean : low.map(level),
    high: single ? mean : high.map(level),
    still: findRests(bins.time, path, restBand(visible) * span).map((rest) => level(rest.level)),
    rest: scale.rest,
    visible,
    clip:
      scale.span > 0
        ? { low: level(least), high: level(most) }
        : { low: level(most), high: level(least) },
    noise: quality.noise / Math.sqrt(bins.samplesPerBin) / span,
    sampleNoise: quality.noise / span,
    perBin: bins.samplesPerBin,
  };
}
