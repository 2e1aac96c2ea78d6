import { farthestStop, sameStop } from '../motion/limits.js';
import type { Levels } from './levels.js';
import type { Rest } from './movement.js';

/** Levels at which the throttle came to rest at its stops. */
export interface Stops {
  readonly closed: number;
  readonly open: number;
}

/**
 * The stops' levels, from the rests at the outermost ones; the expected ones, 0 and 1, where there are none. A rest at the end
 * of the recorder's range tells none: the throttle may have stood anywhere beyond it.
 */
export function stopsOf(
  rests: readonly Pick<Rest, 'level'>[],
  { clip, noise }: Pick<Levels, 'clip' | 'noise'>,
): Stops {
  const shown = rests.filter(({ level }) => level > clip.low + noise && level < clip.high - noise);
  return { closed: stopNear(0, shown) ?? 0, open: stopNear(1, shown) ?? 1 };
}

/** The mean level of the outermost rests near to where a stop is expected; undefined where there are none. */
export function stopNear(stop: 0 | 1, rests: readonly Pick<Rest, 'level'>[]): number | undefined {
  const near = rests.filter(({ level }) => Math.abs(level - stop) <= farthestStop);
  if (near.length === 0) return undefined;
  const levels = near.map(({ level }) => level);
  const outer = stop === 0 ? Math.min : Math.max;
  const outermost = levels.reduce((most, level) => outer(most, level));
  const there = levels.filter((level) => Math.abs(level - outermost) <= sameStop);
  return there.reduce((sum, level) => sum + level, 0) / there.length;
}
