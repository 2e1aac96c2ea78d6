import { halfWindow } from '../capture/captureQuality.js';
import { handSpeed, restitution, sameStop } from '../motion/limits.js';
import type { Seconds } from '../units.js';
import type { Levels } from './levels.js';

/** A throttle thrown onto a stop, by its spring or a quick hand, with what followed until it lay still. */
export interface Throw {
  readonly direction: 'opening' | 'closing';
  /** Bins: the move's first, the one that touches the stop, and the last that a rebound visibly lifts. */
  readonly start: number;
  readonly touch: number;
  readonly settled: number;
  readonly from: number;
  /** Where it came to lie still. */
  readonly to: number;
  /** Heights of the rebounds' tops above where it came to lie still, in order. */
  readonly rebounds: readonly number[];
}

/** A throw moves so far, a quarter of it within this time or from one sample to the next. */
const leastHeight = 0.12;
const fastTime: Seconds = 5e-3;
/** It is over within this time, and its rebounds have died away within as much again: the slowest springs take a third of a second. */
const longest: Seconds = 0.35;

/**
 * Finds the moves in which a throttle is thrown onto a stop: far within tens of milliseconds, after which it lies still near where it
 * touched, but for rebounds that come at once, each lower than the one before.
 *
 * @param path The recording without what a contact did.
 */
export function findThrows(levels: Levels, path: Float64Array): readonly Throw[] {
  const { time, interval, visible } = levels;
  const reach = Math.max(1, Math.round(fastTime / interval));
  const found: Throw[] = [];
  for (let i = 0; i + reach < path.length; i++) {
    const change = path[i + reach]! - path[i]!;
    if (Math.abs(change) < leastHeight / 4 + visible) continue;
    if (time[i + reach]! - time[i]! > 3 * Math.max(fastTime, interval)) continue;
    const one = throwAt(levels, path, change < 0 ? 1 : -1, i, i + reach);
    if (!one) continue;
    found.push(one);
    i = Math.max(i, one.settled);
  }
  return found;
}

/** @param sign 1 for a closing throw, −1 for an opening one: turned so that it falls. */
function throwAt(
  { time, interval, visible }: Levels,
  path: Float64Array,
  sign: 1 | -1,
  early: number,
  late: number,
): Throw | undefined {
  const height = (bin: number): number => sign * path[bin]!;
  const step = Math.max(1, Math.round(fastTime / interval));
  const least = Math.max(handSpeed * step * interval, visible / 2);
  let start = early;
  while (start - step >= 0 && height(start - step) - height(start) >= least) start -= step;
  while (start < early && height(start) - height(start + 1) < least / step) start++;
  let touch = late;
  while (touch + step < path.length && height(touch) - height(touch + step) >= least) touch += step;
  const last = Math.min(path.length - 1, touch + 2 * step);
  for (let i = touch; i <= last; i++) if (height(i) < height(touch)) touch = i;
  const fall = height(start) - height(touch);
  if (fall < leastHeight || time[touch]! - time[start]! > longest + interval) return undefined;
  const landed = settles(time, height, touch, fall, visible);
  if (!landed) return undefined;
  const { settled, to, rebounds } = landed;
  const direction = sign > 0 ? 'closing' : 'opening';
  return { direction, start, touch, settled, from: path[start]!, to: sign * to, rebounds };
}

/** Follows the rebounds until the throttle lies still near the touch for longer than what is no movement; nothing where it goes elsewhere. */
function settles(
  time: Float64Array,
  height: (bin: number) => number,
  touch: number,
  fall: number,
  visible: number,
): Pick<Throw, 'settled' | 'to' | 'rebounds'> | undefined {
  const band = visible / 2;
  const slack = sameStop + visible;
  let still = touch;
  let moves = true;
  for (let i = touch + 1; i < time.length; i++) {
    if (time[i]! - time[touch]! > longest) break;
    if (height(i) - height(touch) > restitution ** 2 * fall + visible) return undefined;
    if (Math.abs(height(i) - height(still)) > band) still = i;
    moves = time[i]! - time[still]! < halfWindow && i + 1 < time.length;
    if (!moves) break;
  }
  const to = height(still);
  if (moves || Math.abs(to - height(touch)) > slack) return undefined;
  const rebounds: number[] = [];
  let settled = touch;
  let [top, before, rises] = [0, 0, true];
  for (let i = touch; i <= still; i++) {
    const above = height(i) - to;
    if (above > visible) settled = i;
    if (above > before) rises = true;
    if (rises && above > top) top = above;
    if (top > visible && above < top / 2) {
      rebounds.push(top);
      [top, rises] = [0, false];
    }
    before = above;
  }
  return { settled: Math.max(settled, touch), to, rebounds };
}
