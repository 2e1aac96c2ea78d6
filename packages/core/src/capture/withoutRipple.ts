import { median } from '../statistics/median.js';
import type { Hertz } from '../units.js';
import type { Bins } from './bins.js';
import { mainsPeriods } from './limits.js';

/** The ripple of a stretch is the median over this many to either side, so that single events do not count. */
const neighbours = 4;
const harmonics = 6;

/**
 * Takes the mains ripple and its harmonics out of the bins: in each stretch of 0.2 s the sine and the cosine that the
 * residuals from the path hold, steadied by the median over neighbouring stretches.
 *
 * Method: correlation with the frequency and its multiples (discrete Fourier transform at known frequencies).
 *
 * @param path The signal without anything fast, V.
 */
export function withoutRipple(bins: Bins, path: Float64Array, hertz: Hertz): Bins {
  const ripple = new Float64Array(path.length);
  for (let harmonic = 1; harmonic <= harmonics; harmonic++) {
    const frequency = hertz * harmonic;
    // It shows in bins of less than half its period (Nyquist).
    if (2 * frequency * bins.interval >= 1) break;
    addHarmonic(ripple, bins, path, 2 * Math.PI * frequency);
  }
  if (bins.samplesPerBin > 1) {
    const less = (values: Float64Array) => values.map((volts, i) => volts - ripple[i]!);
    return { ...bins, mean: less(bins.mean), low: less(bins.low), high: less(bins.high) };
  }
  // Bins of one sample have one value; long recordings are spared two more arrays.
  for (let i = 0; i < ripple.length; i++) ripple[i] = bins.mean[i]! - ripple[i]!;
  return { ...bins, mean: ripple, low: ripple, high: ripple };
}

function addHarmonic(
  ripple: Float64Array,
  { time, mean, interval }: Bins,
  path: Float64Array,
  radians: number,
): void {
  const length = Math.max(1, Math.round(mainsPeriods / interval));
  const count = Math.floor(mean.length / length);
  const cosines = new Float64Array(count);
  const sines = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    for (let i = k * length; i < (k + 1) * length; i++) {
      const residual = (mean[i]! - path[i]!) * (2 / length);
      cosines[k]! += residual * Math.cos(radians * time[i]!);
      sines[k]! += residual * Math.sin(radians * time[i]!);
    }
  }
  for (let k = 0; k < count; k++) {
    const from = Math.max(0, k - neighbours);
    const cosine = median(cosines.subarray(from, k + neighbours + 1));
    const sine = median(sines.subarray(from, k + neighbours + 1));
    const to = k === count - 1 ? mean.length : (k + 1) * length;
    for (let i = k * length; i < to; i++) {
      ripple[i]! += cosine * Math.cos(radians * time[i]!) + sine * Math.sin(radians * time[i]!);
    }
  }
}
