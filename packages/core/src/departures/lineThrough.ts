import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';

/** A straight line through bins of a recording, by its middle. */
export interface LineThrough {
  readonly bins: number;
  /** Mean time and mean level. */
  readonly time: Seconds;
  readonly level: number;
  /** Change of level per second; 0 for a single moment. */
  readonly speed: number;
  /** Root of the summed squares of the times from the middle: the bins' noise over it is the speed's uncertainty. */
  readonly leverage: Seconds;
}

/** The least-squares line through the bins from one to another, both included. */
export function lineThrough(
  { time, mean }: Pick<Levels, 'time' | 'mean'>,
  from: number,
  to: number,
): LineThrough {
  const bins = to - from + 1;
  let middle = 0;
  let level = 0;
  for (let i = from; i <= to; i++) {
    middle += time[i]! / bins;
    level += mean[i]! / bins;
  }
  let covariance = 0;
  let variance = 0;
  for (let i = from; i <= to; i++) {
    covariance += (time[i]! - middle) * (mean[i]! - level);
    variance += (time[i]! - middle) ** 2;
  }
  const speed = variance > 0 ? covariance / variance : 0;
  return { bins, time: middle, level, speed, leverage: Math.sqrt(variance) };
}
