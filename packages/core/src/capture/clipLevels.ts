import { normalProbability } from '../statistics/normalDistribution.js';
import type { Volts } from '../units.js';
import { fewestSamples, strideOver, writtenAlike } from './limits.js';

/** Readings at which a recorder was at the end of its range; left out where it never was. */
export interface ClipLevels {
  /** The lower end of its range, V, any; left out where no reading stood there. */
  readonly low?: Volts;
  /** The upper end of its range, V, above `low`; left out where no reading stood there. */
  readonly high?: Volts;
  /** Readings, V, at which it may have been at an end, or the throttle lay still before a quiet recorder; left out where there are none. */
  readonly perhaps?: { readonly low?: Volts; readonly high?: Volts };
}

/** A level that lies beyond the range by the noise's deviation leaves this part of the samples at its end. */
const mostAtOneValue = normalProbability(1);

/** How often neighbouring samples are equal where the signal lies still between two readings; 0 where it never does. */
function equalElsewhere(
  signal: Float64Array,
  stride: number,
  low: Volts,
  high: Volts,
  near: Volts,
): number {
  let [equal, pairs] = [0, 0];
  for (let from = 0; from + fewestSamples <= signal.length; from += fewestSamples * stride) {
    let [least, most, same] = [Infinity, -Infinity, 0];
    for (let i = from; i < from + fewestSamples; i++) {
      least = Math.min(least, signal[i]!);
      most = Math.max(most, signal[i]!);
      if (i > from && signal[i] === signal[i - 1]) same++;
    }
    if (most - least > 2 * near || least < low || most > high) continue;
    equal += same;
    pairs += fewestSamples - 1;
  }
  return pairs > 0 ? equal / pairs : 0;
}

/**
 * Finds the ends of the recorder's range from the data: noise spreads a resting signal over several values, the
 * outermost of them rare; at the end of the range nearly all nearby samples have the very outermost value. Noise below
 * half a step can leave many of a resting signal's samples at one value, at most 2Φ(step/2σ) − 1 of them: then more must be there.
 */
export function clipLevels(signal: Float64Array, noise: Volts, resolution: Volts): ClipLevels {
  const stride = strideOver(signal.length);
  let low = signal[0]!;
  let high = low;
  for (let i = 0; i < signal.length; i += stride) {
    const volts = signal[i]!;
    if (volts < low) low = volts;
    if (volts > high) high = volts;
  }
  if (noise < writtenAlike * (high - low) || low === high) return {};
  const near = 2 * noise + resolution;
  let [atLow, nearLow, atHigh, nearHigh] = [0, 0, 0, 0];
  for (let i = 0; i < signal.length; i += stride) {
    const volts = signal[i]!;
    if (volts <= low + near) {
      nearLow++;
      if (volts === low) atLow++;
    }
    if (volts >= high - near) {
      nearHigh++;
      if (volts === high) atHigh++;
    }
  }
  const byChance = 2 * normalProbability(resolution / (2 * noise)) - 1;
  const share = Math.max(mostAtOneValue, (1 + byChance) / 2);
  const isOne = (at: number, around: number): boolean => at >= fewestSamples && at > share * around;
  // Where noise moves a signal that lies still, neighbours are rather not equal.
  const isQuiet = (from: Volts, to: Volts): boolean =>
    equalElsewhere(signal, stride, from, to, near) > 0.5;
  const [oneLow, oneHigh] = [isOne(atLow, nearLow), isOne(atHigh, nearHigh)];
  const quiet =
    (oneLow || oneHigh) && isQuiet(oneLow ? low + near : low, oneHigh ? high - near : high);
  const quietAtBoth = oneLow && oneHigh;
  return {
    ...(oneLow && !quiet && !quietAtBoth && { low }),
    ...(oneHigh && !quiet && !quietAtBoth && { high }),
    ...((quiet || quietAtBoth) && {
      perhaps: { ...(oneLow && { low }), ...(oneHigh && { high }) },
    }),
  };
}
