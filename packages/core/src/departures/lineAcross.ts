import type { Levels } from '../movement/levels.js';
import { median } from '../statistics/median.js';
import type { Seconds } from '../units.js';

/** The level beside a stretch is the median over this time, of three bins at the least. */
const levelOver: Seconds = 4e-3;

/**
 * The straight line across a stretch, between the levels of the recording beside it.
 *
 * @param from Last bin before the stretch; `to` the first one after it.
 * @returns The line's level at a bin; none for a stretch at either end of the recording.
 */
export function lineAcross(
  { time, mean, interval }: Levels,
  from: number,
  to: number,
): ((bin: number) => number) | undefined {
  // An odd number, so that their median stands at the middle one.
  const bins = 2 * Math.max(1, Math.round(levelOver / interval / 2)) + 1;
  if (from < bins || to + bins >= mean.length) return undefined;
  const start = median(mean.slice(from - bins + 1, from + 1));
  const end = median(mean.slice(to, to + bins));
  const begin = time[from - (bins >> 1)]!;
  const seconds = time[to + (bins >> 1)]! - begin;
  return (bin) => start + (end - start) * ((time[bin]! - begin) / seconds);
}
