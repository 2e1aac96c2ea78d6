import type { Levels } from './levels.js';
import { edgeTime, handAcceleration, handSpeed } from './mechanics.js';

/** A throttle that a spring moves gains this much speed from one sample to the next. */
const gaining = 1.25;
/** The speed on either side of an edge is taken over this time, or between neighbours where they are farther apart. */
const speedOver = 3e-3;

/**
 * Cuts a recording where it changes faster than a hand can: each mark stands on the first bin after an edge.
 * An edge is a change between neighbours, or over the time that a contact's edge takes, of more than the
 * visible departure beyond what the speeds before and after it, and a hand's acceleration, explain.
 *
 * @param exempt Marks the bins of fast moves: no cuts there. When left out, any speed that lasts counts as a movement.
 */
export function findCuts(levels: Levels, exempt?: Uint8Array): Uint8Array {
  const { mean, interval } = levels;
  const cuts = new Uint8Array(mean.length);
  const least = levels.visible;
  const fastest = exempt ? handSpeed : Infinity;
  for (let i = 1; i < mean.length; i++) {
    if (exempt?.[i - 1] && exempt[i]) continue;
    if (unexplained(levels, i - 1, i, fastest) > least) cuts[i] = 1;
  }
  if (!exempt) return cuts;
  const reach = Math.round(edgeTime / interval);
  for (let i = 0; i + reach < mean.length && reach > 1; i++) {
    if (exempt[i] || exempt[i + reach]) continue;
    if (unexplained(levels, i, i + reach, fastest) <= least) continue;
    let steepest = i + 1;
    let isCut = false;
    for (let k = i + 1; k <= i + reach; k++) {
      if (cuts[k]) isCut = true;
      if (Math.abs(mean[k]! - mean[k - 1]!) > Math.abs(mean[steepest]! - mean[steepest - 1]!)) {
        steepest = k;
      }
    }
    if (!isCut) cuts[steepest] = 1;
  }
  return cuts;
}

/** How much of the change from one bin to another no hand's movement explains; 0 or less where it all is. */
function unexplained(
  { time, mean, interval }: Levels,
  from: number,
  to: number,
  fastest: number,
): number {
  const change = mean[to]! - mean[from]!;
  const sign = Math.sign(change);
  const seconds = time[to]! - time[from]!;
  const over = Math.max(1, Math.round(speedOver / interval));
  const before = Math.max(0, from - over);
  const after = Math.min(mean.length - 1, to + over);
  const speedBefore =
    before === from ? 0 : (mean[from]! - mean[before]!) / (time[from]! - time[before]!);
  const speedAfter = after === to ? 0 : (mean[after]! - mean[to]!) / (time[after]! - time[to]!);
  const speed = Math.min(fastest, gaining * Math.max(0, sign * speedBefore, sign * speedAfter));
  // Between neighbours that lie far apart, a speed is that of half their distance ago.
  const since = over > 1 ? seconds / 2 : seconds;
  return Math.abs(change) - speed * seconds - handAcceleration * seconds * since;
}
