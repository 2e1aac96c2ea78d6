import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import type { Excursion } from './departure.js';
import { lineThrough } from './lineThrough.js';

/** A departure that swings this part of its depth to the other side as well went both ways. */
const bothWays = 0.4;

/**
 * A departure toward the load's rest level, and not beyond it, is a dropout; any other is a spike. Where nothing
 * pulls a lifted wiper anywhere, its signal can go to any one side.
 */
export function kindOfExcursion(
  { rest, visible }: Levels,
  { below, above, level }: Excursion,
): 'dropout' | 'spike' {
  const depth = -below > above ? below : above;
  const other = Math.min(-below, above);
  if (other > visible && other > bothWays * Math.abs(depth)) return 'spike';
  if (rest === undefined) return 'dropout';
  const away = rest - level;
  const sameWay = Math.sign(away) === Math.sign(depth);
  return sameWay && Math.abs(depth) <= 1.05 * Math.abs(away) + visible ? 'dropout' : 'spike';
}

/** The signal is compared in blocks of this length, or bin by bin in a slower recording. */
const block: Seconds = 5e-3;
/** The throttle's speed is taken over this time. */
const speedOver: Seconds = 0.04;
/** What stands still moves slower than this part of what moves. */
const standing = 0.3;
/** The throttle moves as it leaves a dead spot, at this part of the speed before at the least. */
const goesOn = 0.1;
/** A dead spot's jump makes up for the movement meanwhile, within a factor. */
const makesUp = 2.5;

/** A jump of the path: what it seems by itself, and where it starts. */
export interface Jump {
  readonly kind: 'dead-spot' | 'step';
  readonly start: number;
}

/**
 * A jump after a standstill, on to where the throttle had moved meanwhile, ends a dead spot; any other is a step.
 *
 * @param from Last bin before the jump; `to` the first one after it.
 */
export function kindOfJump(levels: Levels, from: number, to: number): Jump {
  const { time, mean, visible, interval } = levels;
  const change = mean[to]! - mean[from]!;
  const length = Math.max(1, Math.round(block / interval));
  const level = blockMean(mean, from - length + 1, from);
  let start = from;
  while (start - length >= 0) {
    const earlier = blockMean(mean, start - 2 * length + 1, start - length);
    if (Math.abs(earlier - level) > visible / 2) break;
    start -= length;
  }
  const stood = time[from]! - time[start]! + interval;
  const sign = Math.sign(change);
  const later = Math.min(mean.length - 1, firstAt(time, time[to]! + speedOver));
  const earlier = firstAt(time, time[start]! - speedOver);
  const speedAfter = lineThrough(levels, to, later).speed * sign;
  const speedBefore = lineThrough(levels, earlier, start).speed * sign;
  const faster = Math.max(speedBefore, speedAfter);
  const wouldHaveMoved = faster * stood;
  // Where it moved the same way before and after, the slower of the two may have been the speed meanwhile.
  const slower = Math.min(speedBefore, speedAfter);
  const atLeast = slower > 0 ? slower * stood : wouldHaveMoved;
  const moved = Math.abs(lineThrough(levels, start, from).speed) * stood;
  const stands =
    stood > 2 * interval &&
    moved <= standing * wouldHaveMoved &&
    wouldHaveMoved >= Math.max(visible, Math.abs(change) / makesUp);
  const isDead = stands && speedAfter > goesOn * faster && atLeast <= makesUp * Math.abs(change);
  return isDead ? { kind: 'dead-spot', start } : { kind: 'step', start: from };
}

function blockMean(values: Float64Array, from: number, to: number): number {
  const first = Math.max(0, from);
  let sum = 0;
  for (let i = first; i <= to; i++) sum += values[i]!;
  return sum / (to - first + 1);
}
