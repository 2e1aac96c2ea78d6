import type { AbruptDeparture } from '../acCoupled/abruptDepartures.js';
import type { Recorder } from '../capture/captureQuality.js';
import { checkRecorder } from '../capture/checkRecorder.js';
import type { Stretch, Sweep, UnreadRows } from '../capture/sweep.js';
import { type Criteria, wholeCriteria } from '../criteria.js';
import { InputError } from '../errors.js';
import { checkExpectation } from '../expectation/checkExpectation.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Finding, Rest, Score, SnapClosing, Stroke } from '../score/score.js';
import { scoreSweep } from '../score/scoreSweep.js';
import type { Seconds } from '../units.js';
import { checkChunk } from './checkChunk.js';
import { findingsSoFar } from './findingsSoFar.js';
import { growingColumn } from './growingColumn.js';
import { clippedIn, type Hint, hintsOf } from './hintsOf.js';
import { mostSamples, recentStretch } from './recentStretch.js';

/** What a recording seems to show while it runs; the end may overthrow it. */
export interface ProvisionalScore {
  readonly provisional: true;
  /** Samples fed so far, 0 or more. */
  readonly samples: number;
  /** The recent stretch that was judged, s; left out as long as it takes no time. */
  readonly judged?: { readonly start: Seconds; readonly end: Seconds };
  /** Movement in the recent stretch. */
  readonly strokes: readonly Stroke[];
  /** Rests in the recent stretch. */
  readonly rests: readonly Rest[];
  /** Closings by the spring in the recent stretch. */
  readonly snaps: readonly SnapClosing[];
  /**
   * Findings so far, of the recent stretch and of those judged before; of the latter the latest 100. Of a recorder that is coupled through a capacitor
   * they are abrupt departures.
   */
  readonly findings: readonly (Finding | AbruptDeparture)[];
  /** How many findings there were so far, those no longer kept included. */
  readonly found: number;
  /** What to do better, as the recent stretch shows, of a range that was not told the latest judgement of the whole (`soFar`); empty where nothing is. */
  readonly hints: readonly Hint[];
}

/** A sweep that is being recorded. */
export interface LiveSweep {
  /**
   * Takes the next samples; an empty chunk changes nothing, but for its rows without a reading.
   *
   * @param time In s.
   * @param signal In V, as many as of time.
   * @param supply In V, as many as of time; with every chunk or with none.
   * @param unread Rows of the chunk without a reading.
   * @throws InputError `length-mismatch`, `missing`, `not-finite` or `out-of-range` with the path in the chunk, such
   * as `chunk.signal[12]`; `ended` after the end. A chunk that is refused leaves no trace.
   */
  feed(
    time: ArrayLike<number>,
    signal: ArrayLike<number>,
    supply?: ArrayLike<number>,
    unread?: readonly UnreadRows[],
  ): void;
  /**
   * Judges the last 4 s (at most 524,288 samples) by themselves: what a call costs does not grow with the recording.
   * Call it at least every 3.5 s, or stretches between the calls go unseen until the end.
   *
   * @throws InputError `time-backwards` where time runs back in the stretch, `no-span` for an expectation without one.
   */
  provisional(): ProvisionalScore;
  /**
   * Judges all that is kept of the recording and goes on: what is still missing stands in `restsOn`, `coverage` and `testsNotDone`. What a
   * call costs grows with the recording.
   *
   * @param stretches What was done when, where it was noted.
   * @throws InputError as {@link scoreSweep} does.
   */
  soFar(stretches?: readonly Stretch[]): Score;
  /**
   * Judges the whole recording, or what is kept of it; nothing can be fed after it.
   *
   * @param stretches What was done when, where it was noted.
   * @returns Exactly what {@link scoreSweep} gives for all that was fed, however it was cut into chunks.
   * @throws InputError as {@link scoreSweep} does.
   */
  end(stretches?: readonly Stretch[]): Score;
}

/**
 * Takes a sweep in while it is recorded, says what it seems to show so far, and judges it in the end.
 *
 * @param expected From {@link expectation}: curve, windows and the load's rest level.
 * @param recorder What is known of the recorder.
 * @param criteria The limits; {@link defaultCriteria} when left out.
 * @param mostKept So many of the latest samples are kept at least, and up to twice as many: for a recording without end, which is written elsewhere.
 * A whole number, 2¹⁹ or more; all are kept when left out.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const live = liveSweep(expectation(circuit));
 * for (let chunk = 0; chunk < 10; chunk++) {
 *   const time = Float64Array.from({ length: 10 }, (_, i) => chunk / 10 + i / 100);
 *   live.feed(time, new Float64Array(10).fill(2.5));
 * }
 * live.provisional().samples // => 100
 * live.end().verdict // => 'fail'
 */
export function liveSweep(
  expected: Expectation,
  recorder: Recorder = {},
  limits: Partial<Criteria> = {},
  mostKept?: number,
): LiveSweep {
  checkExpectation(expected);
  checkRecorder(recorder);
  if (mostKept !== undefined) checkKept(mostKept);
  const criteria = wholeCriteria(limits);
  // The oldest are let go only once twice as many are kept; a chunk may lie above that.
  const mostHeld = mostKept && 2 * mostKept + mostSamples;
  const times = growingColumn(mostHeld);
  const signals = growingColumn(mostHeld);
  const supplies = growingColumn(mostHeld);
  const together = findingsSoFar<Finding | AbruptDeparture>();
  let unreadRows: UnreadRows[] = [];
  let dropped = 0;
  let clipped: readonly Hint[] = [];
  let withSupply: boolean | undefined;
  let ended = false;

  const sweepFrom = (start: number): Sweep => ({
    time: times.values().subarray(start),
    signal: signals.values().subarray(start),
    ...(withSupply && { supply: supplies.values().subarray(start) }),
    ...(unreadRows.length > 0 && {
      unread: unreadRows
        .filter(({ after }) => after >= start)
        .map((rows) => ({ ...rows, after: rows.after - start })),
    }),
  });

  const scored = (from: number, stretches?: readonly Stretch[]): Score =>
    scoreSweep(
      { ...sweepFrom(from), ...(stretches !== undefined && { stretches }) },
      expected,
      recorder,
      criteria,
    );

  /** Lets go of the oldest samples where twice as many are kept as must be. */
  const dropOldest = (most: number): void => {
    const count = times.values().length;
    if (count < 2 * most) return;
    const oldest = count - most;
    for (const column of [times, signals, ...(withSupply ? [supplies] : [])]) column.drop(oldest);
    unreadRows = unreadRows
      .filter(({ after }) => after >= oldest)
      .map((rows) => ({ ...rows, after: rows.after - oldest }));
    dropped += oldest;
  };

  return {
    feed(time, signal, supply, unread = []) {
      if (ended) {
        throw new InputError(
          'ended',
          'chunk',
          'The recording has ended; feed a new one to a new live sweep.',
        );
      }
      const chunk = checkChunk(time, signal, supply, unread);
      const isEmpty = chunk.time.length === 0;
      if (!isEmpty && withSupply !== undefined && withSupply !== (supply !== undefined)) {
        throw new InputError(
          supply ? 'unexpected' : 'missing',
          'chunk.supply',
          `chunk.supply is ${supply ? 'there' : 'missing'} and was ${supply ? 'missing' : 'there'} before; feed the supply with every chunk or with none.`,
        );
      }
      const fed = times.values().length;
      for (const rows of unread)
        unreadRows = withRows(unreadRows, { ...rows, after: rows.after + fed });
      if (isEmpty) return;
      withSupply = supply !== undefined;
      times.append(chunk.time);
      signals.append(chunk.signal);
      if (chunk.supply) supplies.append(chunk.supply);
      if (mostKept !== undefined) dropOldest(mostKept);
    },

    provisional() {
      const from = recentStretch(times.values());
      const sweep = sweepFrom(from);
      const { time } = sweep;
      const samples = dropped + from + time.length;
      if (time.every((at) => at === time[0])) {
        return {
          provisional: true,
          samples,
          strokes: [],
          rests: [],
          snaps: [],
          findings: [],
          found: 0,
          hints: [],
        };
      }
      const score = scored(from);
      const nowFrom = from + recentStretch(time, now);
      const isLong = nowFrom > from && time[time.length - 1]! > time[nowFrom - from]!;
      const { strokes, rests, snaps } = score;
      const judged = { start: time[0]!, end: time[time.length - 1]! };
      return {
        provisional: true,
        samples,
        judged,
        strokes,
        rests,
        snaps,
        ...together({
          ...judged,
          first: dropped + from === 0,
          findings: score.abrupt ?? score.findings,
        }),
        hints: hintsOf(
          score,
          isLong ? scored(nowFrom) : score,
          criteria,
          recorder.range ? undefined : clipped,
          judged.end,
        ),
      };
    },

    soFar(stretches) {
      const score = scored(0, stretches);
      clipped = clippedIn(score, times.values().at(-1)!);
      return score;
    },

    end(stretches) {
      const score = scored(0, stretches);
      ended = true;
      return score;
    },
  };
}

/** What spoils a recording is looked for in so much of it: s. */
const now: Seconds = 1;

/** Rows without a reading with those that came next: one entry where they are of one kind, with no sample between. */
function withRows(all: UnreadRows[], next: UnreadRows): UnreadRows[] {
  const last = all.at(-1);
  if (last?.reading !== next.reading || last.after !== next.after) {
    all.push(next);
    return all;
  }
  all[all.length - 1] = { ...last, rows: last.rows + next.rows, end: next.end };
  return all;
}

function checkKept(mostKept: number): void {
  if (Number.isSafeInteger(mostKept) && mostKept >= mostSamples) return;
  throw new InputError(
    'not-a-count',
    'mostKept',
    `mostKept is ${String(mostKept)}; it must be a whole number, ${mostSamples} or more.`,
  );
}
