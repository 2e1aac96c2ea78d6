import { unseenHand } from '../motion/limits.js';
import type { Levels } from '../movement/levels.js';
import type { Excursion } from './departure.js';
import { findExcursions } from './excursions.js';
import { withoutLoneOutliers } from './withoutLoneOutliers.js';

/** What goes away and comes back this much faster than it moves beside it is no turn of the throttle. */
const ofTurn = 0.35;

/**
 * Excursions that begin and end as gradually as a throttle moves, but sooner than a hand can: they stand out from the path smoothed
 * over that time.
 *
 * @param levels Of the recording with bridges over what was found.
 * @param smooth The same, smoothed by a running median.
 * @param taken Bins that are not looked at.
 */
export function gradualExcursions(
  levels: Levels,
  smooth: Float64Array,
  taken: Uint8Array,
  fast: Uint8Array,
): readonly Excursion[] {
  const { mean, time, interval, visible } = levels;
  // Between samples farther apart than a hand needs to turn back the movement itself bends the recording.
  if (interval > unseenHand(visible)) return [];
  const path = smooth === mean ? withoutLoneOutliers(time, mean) : smooth;
  const kept = path.map((level, i) => (fast[i] ? mean[i]! : level));
  const single = { ...levels, low: mean, high: mean };
  const isFree = ({ from, to }: Excursion): boolean => !taken.subarray(from, to + 1).includes(1);
  return findExcursions(single, kept).filter((one) => isFree(one) && !turnsRound(levels, one));
}

/** Whether an excursion is where the throttle turns round, at a stop or in a hand: it comes and goes as fast as it moves beside it. */
function turnsRound({ time, mean }: Levels, { from, to, below, above }: Excursion): boolean {
  const reach = Math.max(3, to - from);
  const speed = (first: number, last: number): number => {
    const [i, k] = [Math.max(0, first), Math.min(mean.length - 1, last)];
    return k > i ? (mean[k]! - mean[i]!) / (time[k]! - time[i]!) : 0;
  };
  const [before, after] = [speed(from - reach, from), speed(to, to + reach)];
  const depth = Math.max(-below, above);
  const turned = (Math.abs(before - after) / 2) * (time[to]! - time[from]!);
  return before * after < 0 && turned > ofTurn * depth;
}
