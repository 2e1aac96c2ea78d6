import type { Sweep } from '../capture/sweep.js';
import type { Seconds, Volts } from '../units.js';

/**
 * Means of a signal over stretches that follow one another, the signal being straight between its samples.
 *
 * @returns A function for the mean from one time to a later one; the times of its calls never fall.
 */
export function movingMean({ time, signal }: Sweep): (from: Seconds, to: Seconds) => Volts {
  let [before, area, at] = [0, 0, time[0]!];
  /** The area under the signal from its first sample to a time. */
  const areaTo = (seconds: Seconds): number => {
    while (before < time.length - 1 && time[before + 1]! <= seconds) {
      area += ((signal[before]! + signal[before + 1]!) / 2) * (time[before + 1]! - at);
      before += 1;
      at = time[before]!;
    }
    const rest = seconds - at;
    if (rest <= 0 || before === time.length - 1) return area + signal[before]! * Math.max(0, rest);
    const slope = (signal[before + 1]! - signal[before]!) / (time[before + 1]! - at);
    return area + rest * (signal[before]! + (slope * rest) / 2);
  };
  let [last, lastArea] = [Number.NaN, 0];
  return (from, to) => {
    const start = from === last ? lastArea : areaTo(from);
    lastArea = areaTo(to);
    last = to;
    return (lastArea - start) / (to - from);
  };
}
