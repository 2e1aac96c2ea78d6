import type { Seconds, Volts } from '../units.js';
import type { ClipLevels } from './clipLevels.js';
import { fewestSamples, strideOver } from './limits.js';
import type { MainsRipple } from './mainsRipple.js';

/** Second differences reach over this time at the most: too short for a hand to bend the signal. */
const longestReach: Seconds = 4e-3;
/** Root mean square of the smaller nine tenths of normal deviates' sizes. */
const ninetyPercentRms = 0.789283;

/**
 * The standard deviation of the noise, from second differences, in which steady movement cancels; the
 * largest tenth of them (edges, snaps) is left out. Several lags are tried and the largest result kept,
 * since filtered noise hides from neighbouring samples. Samples at the end of the recorder's range say nothing of
 * noise, those beside them show one side of it. Mains ripple that is known is taken out. Never below the resolution's
 * own √(q²/12).
 *
 * Method: trimmed second-difference estimate after J. von Neumann et al., Ann. Math. Statist. 12 (1941);
 * from memory.
 */
export function noiseLevel(
  signal: Float64Array,
  interval: Seconds,
  resolution: Volts,
  ripple?: MainsRipple,
  clip: ClipLevels = {},
): Volts {
  let level = resolution / Math.sqrt(12);
  for (let lag = 1; lag === 1 || 2 * lag * interval <= longestReach; lag *= 2) {
    if (2 * lag >= signal.length) break;
    const found = trimmedScale(signal, lag, clip);
    const known = ripple ? rippleScale(ripple, lag * interval) : 0;
    level = Math.max(level, Math.sqrt(Math.max(0, found * found - known * known)));
  }
  const { low = -Infinity, high = Infinity } = clip;
  const [above, below] = [oneSided(signal, low, 1, level), oneSided(signal, high, -1, level)];
  return Math.max(level, above, below);
}

/** Noise at the limit is sought up to this many times what shows elsewhere; what goes farther left the limit. */
const farthest = 6;

/**
 * Scatter of a signal that lies at an end of the range, from what rises from it beside samples that don't: a normal
 * deviate's one side has the root mean square of both. 0 where there are too few.
 *
 * @param sign 1 for the low end, −1 for the high one.
 */
function oneSided(signal: Float64Array, limit: Volts, sign: 1 | -1, level: Volts): Volts {
  if (!Number.isFinite(limit)) return 0;
  const stride = strideOver(signal.length);
  const all = new Float64Array(Math.ceil(signal.length / stride));
  let found = 0;
  for (let at = 1; at + 1 < signal.length; at += stride) {
    const beyond = sign * (signal[at]! - limit);
    const atLimit = sign * (signal[at - 1]! - limit) <= 0 || sign * (signal[at + 1]! - limit) <= 0;
    if (atLimit && beyond > 0 && beyond <= farthest * level) all[found++] = beyond;
  }
  return found < fewestSamples ? 0 : trimmedRms(all.subarray(0, found));
}

function trimmedScale(
  signal: Float64Array,
  lag: number,
  { low = -Infinity, high = Infinity }: ClipLevels,
): Volts {
  const count = signal.length - 2 * lag;
  const stride = strideOver(count);
  const all = new Float64Array(Math.ceil(count / stride));
  let found = 0;
  for (let at = 0; at < count; at += stride) {
    const middle = signal[at + lag]!;
    if (middle <= low || middle >= high) continue;
    all[found++] = Math.abs(signal[at]! - 2 * middle + signal[at + 2 * lag]!);
  }
  return found === 0 ? 0 : trimmedRms(all.subarray(0, found)) / Math.sqrt(6);
}

/** Root mean square of normal deviates' sizes, from the smaller nine tenths of them. */
function trimmedRms(sizes: Float64Array): number {
  sizes.sort();
  const kept = Math.max(1, Math.floor(0.9 * sizes.length));
  let squares = 0;
  for (let i = 0; i < kept; i++) squares += sizes[i]! ** 2;
  return Math.sqrt(squares / kept) / ninetyPercentRms;
}

/** What a sine adds to the trimmed scale of its second differences; trimming makes it count 1.16 times its own. */
function rippleScale({ volts, hertz }: MainsRipple, reach: Seconds): Volts {
  return (1.16 * volts * (1 - Math.cos(2 * Math.PI * hertz * reach))) / Math.sqrt(3);
}
