import { halfWindow } from '../capture/captureQuality.js';
import type { ContactLevels } from '../contact/contactLevels.js';
import { openTrackLeaps } from '../contact/openTrack.js';
import type { Departure } from '../departures/departure.js';
import { findDepartures } from '../departures/findDepartures.js';
import { sameStop } from '../motion/limits.js';
import { runningMedian } from '../statistics/runningMedian.js';
import type { Levels } from './levels.js';
import {
  findRests,
  findStrokes,
  type Rest,
  restBand,
  type SnapClosing,
  type Stroke,
} from './movement.js';
import { type Stops, stopsOf } from './stopsOf.js';
import { withoutRebounds } from './withoutRebounds.js';

/** What the throttle did. */
export interface Movement {
  /** Level bin by bin, smooth, without departures and rebounds. */
  readonly path: Float64Array;
  readonly strokes: readonly Stroke[];
  readonly rests: readonly Rest[];
  readonly snaps: readonly SnapClosing[];
  readonly stops: Stops;
  /** How often it flew open and rebounded there. */
  readonly flungOpen: number;
}

/** The outermost levels at which the recording lay still; infinite where it never lay near a stop. */
function roughStops(still: readonly number[]): Stops {
  const closed = still.reduce((least, level) => Math.min(least, level), Infinity);
  const open = still.reduce((most, level) => Math.max(most, level), -Infinity);
  return {
    closed: closed < sameStop ? closed : -Infinity,
    open: open > 1 - sameStop ? open : Infinity,
  };
}

/**
 * Tells the throttle's movement from what left its path.
 *
 * @param draft As long as the levels, to work in; it becomes the movement's path.
 */
export function followThrottle(
  levels: Levels,
  draft: Float64Array,
  contact: ContactLevels,
): {
  readonly departures: readonly Departure[];
  /** What is rather a departure than none, and not surely. */
  readonly doubtful: readonly Departure[];
  /** Level bin by bin as the throttle drew it, rebounds included. */
  readonly path: Float64Array;
  readonly movement: Movement;
  /** Whether the recording knows the two levels of an open track only: then nothing tells where the throttle was. */
  readonly isOpenTrack: boolean;
} {
  const { time } = levels;
  const leaps = openTrackLeaps(levels, contact);
  const { path, departures, doubtful, throws } = leaps
    ? { path: levels.mean, departures: leaps, doubtful: [], throws: [] }
    : findDepartures(levels, contact, roughStops(levels.still));
  const snaps = throws
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
  const flungOpen = throws.filter(
    ({ direction, rebounds }) => direction === 'opening' && rebounds.length > 0,
  ).length;
  const half = Math.max(1, Math.round(halfWindow / levels.interval));
  const smooth = withoutRebounds(runningMedian(path, half, draft), time, snaps);
  const rests = findRests(time, smooth, restBand(levels.visible));
  const strokes = findStrokes(time, smooth);
  return {
    departures,
    doubtful,
    path,
    movement: { path: smooth, strokes, rests, snaps, stops: stopsOf(rests, levels), flungOpen },
    isOpenTrack: leaps !== undefined,
  };
}
