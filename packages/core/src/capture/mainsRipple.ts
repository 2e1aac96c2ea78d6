import { median } from '../statistics/median.js';
import type { Hertz, Volts } from '../units.js';
import type { Bins } from './bins.js';
import { mainsPeriods } from './limits.js';

/** Pick-up from the mains in a recording. */
export interface MainsRipple {
  /** Its frequency, Hz, above 0. */
  readonly hertz: Hertz;
  /** Its amplitude (half from lowest to highest), V, above 0. */
  readonly volts: Volts;
}

/** Of which one shows in a recording, Hz. */
const frequencies = [50, 60] as const;

/**
 * The amplitude of 50 Hz or 60 Hz in the departures from the path, as the median over stretches of 0.2 s,
 * so that single events do not count. Nothing where the recording is too slow or too short, or where the
 * amplitude is no more than noise would give.
 */
export function mainsRipple(bins: Bins, path: Float64Array, noise: Volts): MainsRipple | undefined {
  const length = Math.round(mainsPeriods / bins.interval);
  // Both show in samples that lie less than half a period apart (Nyquist).
  const isSlow = frequencies.some((hertz) => 2 * hertz * bins.interval >= 1);
  if (isSlow || bins.mean.length < length) return undefined;
  const [at50, at60] = frequencies.map((hertz) => medianAmplitude(bins, path, length, hertz));
  const [hertz, volts] = at50! >= at60! ? [frequencies[0], at50!] : [frequencies[1], at60!];
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
