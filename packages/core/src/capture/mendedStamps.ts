import { median } from '../statistics/median.js';
import type { Seconds } from '../units.js';
import { accident, fewestSamples, gapIntervals, strideOver } from './limits.js';
import type { TakenStamps } from './takenStamps.js';

/** The signal goes on where the counter begins anew: it changes by so many times its largest change nearby at the most. */
const goesOn = 3;

/** What was wrong with the stamps, by number of samples. */
interface MendedStamps extends Pick<TakenStamps, 'strayed' | 'restarts'> {
  readonly time: Float64Array;
}

/**
 * Takes single stamps that stray from neighbours which lie in order without them, and a counter that begins anew, near where it began at
 * first, while the signal goes on, for what they are.
 *
 * @returns The same array where there is nothing to mend.
 */
export function mendedStamps(time: Float64Array, signal: Float64Array): MendedStamps {
  const count = time.length;
  const backward: number[] = [];
  for (let i = 1; i < count; i++) if (time[i]! < time[i - 1]!) backward.push(i);
  if (backward.length === 0) return { time, strayed: 0, restarts: 0 };
  const usual = usualInterval(time);
  const mended = time.slice();
  let [strayed, restarts, offset] = [0, 0, 0];
  const most = Math.ceil(accident * count);
  for (let i = 1, next = 0; i < count; i++) {
    mended[i] = time[i]! + offset;
    if (backward[next] !== i) continue;
    next++;
    const after = i + 1 < count ? time[i + 1]! + offset : Infinity;
    if (after >= mended[i - 1]! && strayed < most) {
      mended[i] = after === Infinity ? mended[i - 1]! + usual : (mended[i - 1]! + after) / 2;
      strayed++;
    } else if (
      time[i]! - time[0]! <= gapIntervals * usual &&
      after >= mended[i]! &&
      signalGoesOn(signal, i)
    ) {
      offset = mended[i - 1]! + usual - time[i]!;
      mended[i] = time[i]! + offset;
      restarts++;
    }
  }
  return { time: strayed + restarts > 0 ? mended : time, strayed, restarts };
}

function usualInterval(time: Float64Array): Seconds {
  const stride = strideOver(time.length);
  const some: number[] = [];
  for (let i = stride; i < time.length; i += stride) {
    const gap = time[i]! - time[i - 1]!;
    if (gap > 0) some.push(gap);
  }
  return some.length > 0 ? median(Float64Array.from(some)) : 0;
}

function signalGoesOn(signal: Float64Array, at: number): boolean {
  let most = 0;
  for (
    let i = Math.max(1, at - fewestSamples);
    i <= Math.min(signal.length - 1, at + fewestSamples);
    i++
  )
    if (i !== at) most = Math.max(most, Math.abs(signal[i]! - signal[i - 1]!));
  return Math.abs(signal[at]! - signal[at - 1]!) <= goesOn * most;
}
