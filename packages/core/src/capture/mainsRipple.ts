import { median } from '../statistics/median.js';
import type { Hertz, Volts } from '../units.js';
import type { Bins } from './bins.js';

/** Pick-up from the mains in a recording. */
export interface MainsRipple {
  /** Its frequency, Hz, above 0. */
  readonly hertz: Hertz;
  /** Its amplitude (half from lowest to highest), V, above 0. */
  readonly volts: Volts;
}

/** Whole periods of both 50 Hz and 60 Hz. */
const stretch = 0.2;
/** Both frequencies show in samples this far apart (Nyquist). */
const slowest = 1 / 130;

/**
 * The amplitude of 50 Hz or 60 Hz in the departures from the path, as the median over stretches of 0.2 s,
 * so that single events do not count. Nothing where the recording is too slow or too short, or where the
 * amplitude is no more than noise would give.
 */
export function mainsRipple(bins: Bins, path: Float64Array, noise: Volts): MainsRipple | undefined {
  const length = Math.round(stretch / bins.interval);
  if (bins.interval > slowest || bins.mean.length < length) return undefined;
  const [at50, at60] = [50, 60].map((hertz) => medianAmplitude(bins, path, length, hertz));
  const [hertz, volts] = at50! >= at60! ? [50, at50!] : [60, at60!];
  const chance = 4 * noise * Math.sqrt(2 / (length * bins.samplesPerBin));
  return volts > chance ? { hertz, volts } : undefined;
}

function medianAmplitude(
  { time, mean }: Bins,
  path: Float64Array,
  length: number,
  hertz: Hertz,
): Volts {
  const amplitudes: number[] = [];
  for (let from = 0; from + length <= mean.length; from += length) {
    let cosine = 0;
    let sine = 0;
    for (let i = from; i < from + length; i++) {
      const angle = 2 * Math.PI * hertz * time[i]!;
      const residual = mean[i]! - path[i]!;
      cosine += residual * Math.cos(angle);
      sine += residual * Math.sin(angle);
    }
    amplitudes.push((2 * Math.hypot(cosine, sine)) / length);
  }
  return median(Float64Array.from(amplitudes));
}
