import type { Seconds } from '../units.js';
import { firstAt } from './firstAt.js';
import type { SnapClosing } from './movement.js';

/** A spring closes a throttle in some tens of milliseconds; a hand is slower, a contact far faster. */
const longestFall: Seconds = 0.12;
const shortestFall: Seconds = 0.005;
/** Rebounds have died away after this time. */
const longestSettling: Seconds = 0.4;
/** A snap starts at least this far above the closed level. */
const smallestHeight = 0.15;
/** A rebound tops out below this fraction of the height that the throttle fell from. */
const highestRebound = 0.4;

/**
 * Finds the closings by the spring, with their rebounds: a fall to the closed level within tens of
 * milliseconds after which the signal stays there but for tops that come at once, lie on the open side
 * and get lower each time.
 *
 * @param level Mean level of each bin, as a fraction of the span above closed.
 * @param closed The closed level on the same scale.
 * @param visible The smallest visible departure on the same scale.
 */
export function findSnaps(
  time: Float64Array,
  level: Float64Array,
  closed: number,
  visible: number,
): readonly SnapClosing[] {
  const near = closed + Math.max(0.03, visible);
  const snaps: SnapClosing[] = [];
  for (let touch = 1; touch < level.length; touch++) {
    if (!(level[touch]! <= near && level[touch - 1]! > near)) continue;
    const start = fallStart(time, level, touch, visible);
    const height = level[start]! - closed;
    const seconds = time[touch]! - time[start]!;
    const resolved = time[touch]! - time[touch - 1]! < shortestFall;
    if (height < smallestHeight || seconds > longestFall) continue;
    if (resolved && seconds < shortestFall) continue;
    const rebounds = reboundsAfter(time, level, touch, closed, height, visible);
    if (!rebounds) continue;
    snaps.push({
      start: time[start]!,
      touch: time[possibleTouch(level, start, touch, near)]!,
      settled: time[rebounds.end]!,
      from: level[start]!,
      rebounds: rebounds.tops,
    });
    touch = firstAt(time, time[rebounds.end]! + stillness);
  }
  return snaps;
}

/**
 * Where the fall began: the last place near the highest level within the longest fall. A throttle that was
 * already on its way as fast before was closed by hand: then the touch itself is returned.
 */
function fallStart(
  time: Float64Array,
  level: Float64Array,
  touch: number,
  visible: number,
): number {
  const earliest = firstAt(time, time[touch]! - longestFall);
  let highest = level[touch]!;
  for (let i = earliest; i < touch; i++) highest = Math.max(highest, level[i]!);
  let start = touch;
  while (level[start]! < highest - visible / 2) start--;
  const before = firstAt(time, 2 * time[start]! - time[touch]!);
  const height = highest - level[touch]!;
  return level[before]! - level[start]! > height / 2 ? touch : start;
}

/** The first sample from which, at the speed then, the stop was reached before the next: it may have been missed. */
function possibleTouch(level: Float64Array, start: number, touch: number, near: number): number {
  for (let i = start + 1; i < touch; i++) {
    if (2 * level[i]! - level[i - 1]! <= near) return i;
  }
  return touch;
}

/** Nothing rebounds after the throttle has lain still for this long. */
const stillness: Seconds = 0.06;

/**
 * Follows the rebounds until the throttle lies still. Nothing is returned where the signal rises higher
 * than a rebound can, or never comes to lie still: then no spring closed the throttle.
 */
function reboundsAfter(
  time: Float64Array,
  level: Float64Array,
  touch: number,
  closed: number,
  height: number,
  visible: number,
): { readonly tops: readonly number[]; readonly end: number } | undefined {
  const tops: number[] = [];
  let end = touch;
  let top = 0;
  let lowest = level[touch]! - closed;
  for (let i = touch; i < level.length; i++) {
    const above = level[i]! - closed;
    if (above > highestRebound * height) return undefined;
    if (above > visible / 2) {
      end = i;
      if (above - lowest > visible) top = Math.max(top, above);
    } else if (above < visible / 4 && top > 0) {
      tops.push(top);
      top = 0;
      lowest = above;
    }
    lowest = Math.min(lowest, above);
    if (time[i]! - time[end]! > stillness) return { tops, end };
    if (time[end]! - time[touch]! > longestSettling) return undefined;
  }
  return { tops, end };
}
