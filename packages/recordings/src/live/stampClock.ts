import type { Seconds } from '@truesweep/core';

/** A row as it came, before its place in time is known. */
export interface StampedRow<Row> {
  /** Its stamp, s, on the recorder's clock. */
  readonly stamp: Seconds;
  /** When it arrived, s, on a clock of who reads; left out where that means nothing, as of a file. */
  readonly arrived?: Seconds;
  /** Whether a line before it was lost or damaged. */
  readonly afterDamage: boolean;
  readonly row: Row;
}

/** A row with its time. */
export interface PlacedRow<Row> {
  /** s since the first row. */
  readonly time: Seconds;
  readonly row: Row;
}

/** A stretch of a running recording from which nothing came. */
export interface Gap {
  /** `lost`: rows are missing, their stamps tell how long. `restarted`: the recorder began anew, how long it took is told by the arrival of its rows, or taken to be a second. */
  readonly kind: 'lost' | 'restarted';
  /** The last row before it, s. */
  readonly start: Seconds;
  /** The first row after it, s. */
  readonly end: Seconds;
}

/** Gives rows their times. */
export interface StampClock<Row> {
  /** Takes the next row; gives those whose times are now sure, in order: none, it alone, or the one that was held back and it. */
  next(row: StampedRow<Row>): readonly PlacedRow<Row>[];
  /** The gaps since this was asked last. */
  takeGaps(): readonly Gap[];
  /** Rows that were left out since their stamps fit nothing before or after them, one that waits for the next included: 0 or more. */
  strays(): number;
}

/** A step over so many usual ones, or so long, waits for the next row to confirm it. */
const [usualSteps, usualTime] = [20, 0.05];
/** A counter that wraps goes on within this time, s. */
const wrapWithin: Seconds = 0.25;
/** No recorder is silent for longer and goes on: s. */
const longestSilence: Seconds = 3600;
/** A step over so many usual ones is a gap. */
const gapSteps = 10;
/** How long a restart is taken to last where nothing tells it: s. */
const assumedRestart: Seconds = 1;
/** The usual step is the mean of so many. */
const counted = 64;

/**
 * Gives rows of a recorder times that begin at 0 and never run back. A counter that wraps is carried on; a clock that begins anew is a restart,
 * and goes on after a gap; a stamp that leaps waits for the next row: where that does not follow it, it was damaged on the way and its row is left out.
 *
 * @param periods What the stamp's counter may wrap at, s; none for a clock that does not.
 * @param isChecked Whether each line was checked, so that no stamp is wrong.
 */
export function stampClock<Row>(periods: readonly Seconds[], isChecked: boolean): StampClock<Row> {
  let last: { stamp: Seconds; time: Seconds; arrived: Seconds | undefined } | undefined;
  /** What is added to stamps to make times of them. */
  let shift: Seconds = 0;
  /** The highest stamp so far: a counter that got there does not wrap before. */
  let highest: Seconds = -Infinity;
  let held: StampedRow<Row> | undefined;
  let gaps: Gap[] = [];
  let strays = 0;
  let steps: Seconds[] = [];
  let sum = 0;

  const usual = (): Seconds => (steps.length > 0 ? sum / steps.length : 0);

  const place = (row: StampedRow<Row>, kind: Gap['kind'] = 'lost'): PlacedRow<Row> => {
    if (!last) shift = -row.stamp;
    const start = last?.time ?? 0;
    const time = rounded(row.stamp + shift, row.stamp);
    const isGap = last && (kind === 'restarted' || row.afterDamage || isLong(time - start));
    if (isGap) gaps.push({ kind, start, end: time });
    else if (last) count(time - start);
    last = { stamp: row.stamp, time, arrived: row.arrived };
    highest = Math.max(highest, row.stamp);
    return { time, row: row.row };
  };

  const isLong = (step: Seconds): boolean =>
    steps.length > 2 && step > Math.max(gapSteps * usual(), usualTime / gapSteps);

  const count = (step: Seconds): void => {
    // Several rows under one stamp are none apart.
    if (step === 0) return;
    steps.push(step);
    sum += step;
    if (steps.length <= 2 * counted) return;
    steps = steps.slice(-counted);
    sum = steps.reduce((all, one) => all + one, 0);
  };

  /** Whether a row surely follows the last one: by a usual step, or by one over the counter's end. */
  const follows = ({ stamp }: StampedRow<Row>): boolean => {
    const step = stamp - last!.stamp;
    if (step >= 0) return isChecked || step <= Math.max(usualTime, usualSteps * usual());
    const period = periods.find(
      (one) => one > highest && step + one >= 0 && step + one <= wrapWithin,
    );
    if (period !== undefined) shift += period;
    return period !== undefined;
  };

  const restart = (row: StampedRow<Row>): PlacedRow<Row> => {
    const { arrived, time } = last!;
    const waited =
      arrived !== undefined && row.arrived !== undefined ? row.arrived - arrived : assumedRestart;
    shift = time + Math.max(waited, usual()) - row.stamp;
    return place(row, 'restarted');
  };

  /** The held row, confirmed by the next one, as after a silence or a restart; undefined where it was damaged. */
  const confirmed = (row: StampedRow<Row>, next: StampedRow<Row>): PlacedRow<Row> | undefined => {
    const onward = next.stamp - row.stamp;
    const step = row.stamp - last!.stamp;
    if (onward < 0 || Math.max(onward, step) > longestSilence) return undefined;
    return step < 0 ? restart(row) : place(row);
  };

  const next = (row: StampedRow<Row>): readonly PlacedRow<Row>[] => {
    if (!last || follows(row)) {
      if (held) strays += 1;
      const afterDamage = row.afterDamage || held !== undefined;
      held = undefined;
      return [place({ ...row, afterDamage })];
    }
    if (isChecked) return [restart(row)];
    const before = held;
    held = row;
    if (!before) return [];
    const placed = confirmed(before, row);
    if (!placed) {
      strays += 1;
      return [];
    }
    held = undefined;
    return [placed, ...next(row)];
  };

  return {
    next,
    takeGaps() {
      const taken = gaps;
      gaps = [];
      return taken;
    },
    strays: () => strays + (held ? 1 : 0),
  };
}

/** A time with the decimals that a stamp of this size still tells: nanoseconds, of months tens of them. */
function rounded(time: Seconds, stamp: Seconds): Seconds {
  const parts = stamp < 2 ** 20 ? 1e9 : 1e8;
  return Math.round(time * parts) / parts;
}
