import { halfWindow } from '../capture/captureQuality.js';
import { runningMedian } from '../statistics/runningMedian.js';
import { coarseSnaps } from './coarseSnaps.js';
import type { Departure } from './departure.js';
import { findDepartures } from './departures.js';
import type { Levels } from './levels.js';
import { sameStop } from './mechanics.js';
import {
  findRests,
  findStrokes,
  type Rest,
  restBand,
  type SnapClosing,
  type Stroke,
} from './movement.js';
import { withoutRebounds } from './withoutRebounds.js';

/** What the throttle did. */
export interface Movement {
  /** Level bin by bin, smooth, without departures and rebounds. */
  readonly path: Float64Array;
  readonly strokes: readonly Stroke[];
  readonly rests: readonly Rest[];
  readonly snaps: readonly SnapClosing[];
  /** Levels at which the throttle came to rest at its stops; the expected ones, 0 and 1, where it never did. */
  readonly stops: { readonly closed: number; readonly open: number };
}

/** A stop is sought this near to where it is expected. */
const farthestStop = 0.25;

function stopsOf(rests: readonly Rest[]): Movement['stops'] {
  const levelAt = (stop: 0 | 1): number => {
    const near = rests.filter(({ level }) => Math.abs(level - stop) <= farthestStop);
    if (near.length === 0) return stop;
    const levels = near.map(({ level }) => level);
    const outer = stop === 0 ? Math.min : Math.max;
    const outermost = levels.reduce((most, level) => outer(most, level));
    const there = levels.filter((level) => Math.abs(level - outermost) <= sameStop);
    return there.reduce((sum, level) => sum + level, 0) / there.length;
  };
  return { closed: levelAt(0), open: levelAt(1) };
}

/** The closed level is sought no higher than this; above it the throttle was never closed. */
const highestClosed = 0.2;

/**
 * Tells the throttle's movement from what left its path.
 *
 * @param draft As long as the levels, to work in; it becomes the movement's path.
 */
export function followThrottle(
  levels: Levels,
  draft: Float64Array,
): {
  readonly departures: readonly Departure[];
  /** Level bin by bin as the throttle drew it, rebounds included. */
  readonly path: Float64Array;
  readonly movement: Movement;
} {
  const { time } = levels;
  const closed = levels.still.reduce((least, level) => Math.min(least, level), highestClosed);
  const { path, ...found } = findDepartures(levels, closed, draft);
  const { departures, fastMoves } = coarseSnaps(found.departures, found.fastMoves, levels);
  const snaps = fastMoves
    .filter(({ direction }) => direction === 'closing')
    .map(
      ({ start, touch, settled, from, rebounds }): SnapClosing => ({
        start: time[start]!,
        touch: time[touch]!,
        settled: time[settled]!,
        from,
        rebounds,
      }),
    );
  const half = Math.max(1, Math.round(halfWindow / levels.interval));
  const smooth = withoutRebounds(runningMedian(path, half, draft), time, snaps);
  const rests = findRests(time, smooth, restBand(levels.visible));
  const strokes = findStrokes(time, smooth);
  return {
    departures,
    path,
    movement: { path: smooth, strokes, rests, snaps, stops: stopsOf(rests) },
  };
}
