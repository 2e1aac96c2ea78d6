import type { NoReading, Seconds } from '@truesweep/core';
import { carryChecks } from '../checkedLines.js';
import type { ReadColumns } from '../chooseColumns.js';
import { clockTime, nextTime, type RunningClock, secondsOf } from '../clockTime.js';
import { checkOptions, type DelimitedOptions, type TimeUnit } from '../delimitedOptions.js';
import { dialectOf, layoutOf } from '../findLayout.js';
import { joinedBytes } from '../joinedBytes.js';
import { checkedEnd, contentEnd, nextLine } from '../lineCheck.js';
import { fieldBounds, isHeading, noReadingIn, readRow, rolesOf } from '../rowFields.js';
import type { RowLayout } from '../rowLayout.js';
import type { Samples } from '../rowScanner.js';
import { fieldText, scanFields } from '../scanFields.js';
import { checkBytes, checkNumber, checkYesOrNo } from '../shown.js';
import { lastEnd } from '../wholeLines.js';
import { savedRows } from './savedRows.js';
import { type Gap, stampClock } from './stampClock.js';

/** What a row holds: its values by the columns that are read, NaN where one is not there, and what it says instead of its signal's reading. */
export interface LiveRow {
  readonly values: readonly number[];
  readonly reading?: NoReading;
}

/** How the lines of a running recorder are read. */
export interface LiveReading {
  /** Which columns are read, and why; left out until enough lines came to tell. */
  readonly columns?: ReadColumns;
  /** Whether each line carries a check, an asterisk and the CRC-16 of the line in four hexadecimal digits. */
  readonly isChecked: boolean;
  /** Rows that were read, those without a reading included: 0 or more. */
  readonly rows: number;
  /** Lines that were no rows and no headings, or whose check or stamp did not fit; damaged on the way: 0 or more. */
  readonly damagedLines: number;
  /** From when to when nothing came, the latest hundred. */
  readonly gaps: readonly Gap[];
  /** How many gaps there were, those no longer kept included: a count, 0 or more. */
  readonly gapCount: number;
  /** What must be said of the saved text beside its headings, so that it is read as these lines were. */
  readonly savedAs: Pick<
    DelimitedOptions,
    'supplyColumn' | 'secondColumn' | 'positionColumn' | 'voltsPerUnit'
  >;
}

/** Samples of a running recorder, and the same as lines of text. */
export interface LiveSamples extends Samples {
  /** The rows as they are saved: whole lines, headings before the first. A reading keeps its digits; times are s since the first row. */
  readonly text: string;
}

/** Reads the lines of a running recorder as they come. */
export interface LiveReader {
  /**
   * Takes the next bytes.
   *
   * @param arrived When they came, s, on a clock that runs on, for how long a restart took; left out where that means nothing.
   * @throws InputError where the lines are rows whose columns can't be told, or have no scale, as `readDelimited` does.
   */
  feed(bytes: Uint8Array, arrived?: Seconds): LiveSamples;
  /**
   * Says that bytes were lost here, as where a plug was pulled: half a line before it is none.
   *
   * @param isHalfNext Whether what comes next may be half a line too; so when left out. Not so of a file that is begun anew.
   */
  lost(isHalfNext?: boolean): void;
  /** Reads what is left. A line that has no end is none. */
  end(): LiveSamples;
  reading(): LiveReading;
}

/** So many lines are looked at before it is told how they are written. */
const enoughLines = 16;
/** Headings that come again with the lines are waited for as long. */
const mostLines = 2048;
/** And for so long where lines come slowly: s. */
const headingWithin: Seconds = 3;
const mostBytes = 65_536;
const gapsKept = 100;
/** A clock that goes farther from one row to the next is not believed by one row: s. */
const longestLeap: Seconds = 43_200;
const lineFeed = 0x0a;
const carriageReturn = 0x0d;

/** What a counter of stamps wraps at: 16 and 32 bits of its unit. */
const periods: Readonly<Record<TimeUnit, readonly Seconds[]>> = {
  s: [],
  ms: [2 ** 16 / 1e3, 2 ** 32 / 1e3],
  µs: [2 ** 16 / 1e6, 2 ** 32 / 1e6],
  clock: [],
};

/**
 * Reads the lines of a running recorder: as {@link readDelimited} reads a file, but begun after a few lines, and with whatever a line can suffer. A
 * damaged line is left out and counted; stamps of a counter that wraps are carried on; where rows are missing, or the recorder began anew, the
 * times have a gap. No sample is made up.
 *
 * @param options What is known of the lines beforehand.
 * @param fromMiddle Whether the first line may be half of one, as of a port that is opened while the recorder writes.
 *
 * @example
 * const reader = liveReader({}, false);
 * const lines = ['time (ms),signal (V)', ...Array.from({ length: 20 }, (_, i) => `${65_530 + i > 65_535 ? i - 6 : 65_530 + i},0.5`)];
 * const { time } = reader.feed(new TextEncoder().encode(`${lines.join('\n')}\n`));
 * time[19] // => 0.019
 */
export function liveReader(options: DelimitedOptions = {}, fromMiddle = false): LiveReader {
  checkOptions(options);
  checkYesOrNo(fromMiddle, 'fromMiddle');
  const path = options.name ?? 'recording';
  let begun: Uint8Array = new Uint8Array(0);
  let isHalf = fromMiddle;
  let waiting: { bytes: Uint8Array; arrived: Seconds | undefined }[] = [];
  let waitingLines = 0;
  let lookAt = enoughLines;
  let open: OpenLines | undefined;
  let early = 0;

  /** What follows up to the next line end is half a line. */
  const leaveLine = (): void => {
    begun = new Uint8Array(0);
    isHalf = true;
    open?.lost();
  };

  /** Whole lines of these bytes and of what was begun before; the rest is kept. */
  const wholeLinesOf = (bytes: Uint8Array): Uint8Array => {
    const all = begun.length > 0 ? joinedBytes([begun, bytes]) : bytes;
    const end = lastEnd(all);
    // Half a row would be a row of other numbers; half a heading is none.
    const from = isHalf && !beginsLikeHeading(all) ? nextLine(all, 0) : 0;
    if (end > 0) isHalf = false;
    begun = Uint8Array.from(all.subarray(end));
    if (begun.length > mostBytes) {
      // What has no line end for so long is no text; its end is no row.
      early += 1;
      leaveLine();
    }
    return all.subarray(Math.min(from, end), end);
  };

  /** Whether the options say what headings would. */
  const isTold = (
    ['timeColumn', 'signalColumn', 'timeUnit', 'signalUnit', 'sampleRate'] as const
  ).some((name) => options[name] !== undefined);

  /** Headings that come again do so within a second or two. */
  const isPatienceOver = (): boolean => {
    const [first, last] = [waiting[0]?.arrived, waiting.at(-1)?.arrived];
    const isLate = first !== undefined && last !== undefined && last - first > headingWithin;
    return isLate || waitingLines >= mostLines;
  };

  const begin = (isWhole: boolean): OpenLines | undefined => {
    const bytes = joinedBytes(waiting.map((one) => one.bytes));
    const isChecked = carryChecks(bytes);
    const lines = linesOf(bytes, isChecked);
    const heading = lines.findIndex((line) => /^\W*\p{L}/u.test(line));
    const isWaiting = isChecked && heading < 0 && !isTold && !isPatienceOver() && !isWhole;
    if (isWaiting) return undefined;
    // Headings come again and again: those of rows before them too.
    const first = isChecked && heading > 0 ? [lines[heading]!] : [];
    const all = [...first, ...lines];
    const dialect = dialectOf(all, options);
    if (!dialect) return undefined;
    return openLines(layoutOf(all, dialect, options, path), isChecked);
  };

  /** Lets go of the oldest lines of which nothing could be read. */
  const forgetOldest = (): void => {
    while (waiting.length > 1 && waitingLines > mostLines) {
      const count = linesOf(waiting.shift()!.bytes, false).length;
      waitingLines -= count;
      early += count;
    }
  };

  const feedOpen = (lines: OpenLines): LiveSamples => {
    for (const { bytes, arrived } of waiting) lines.feed(bytes, arrived);
    waiting = [];
    return lines.take();
  };

  return {
    feed(bytes, arrived) {
      checkBytes(bytes, 'bytes');
      if (arrived !== undefined) checkNumber(arrived, 'arrived');
      const whole = wholeLinesOf(bytes);
      if (whole.length === 0) return nothing;
      waiting.push({ bytes: Uint8Array.from(whole), arrived });
      if (!open) {
        waitingLines += linesOf(whole, false).length;
        if (waitingLines < lookAt) return nothing;
        open = begin(false);
        lookAt = waitingLines + enoughLines;
        if (!open) {
          forgetOldest();
          lookAt = waitingLines + enoughLines;
          return nothing;
        }
      }
      return feedOpen(open);
    },
    lost(isHalfNext = true) {
      checkYesOrNo(isHalfNext, 'isHalfNext');
      leaveLine();
      isHalf = isHalfNext;
    },
    end() {
      // A CR may have been half a line end; now it is a whole one.
      if (!isHalf && begun.at(-1) === carriageReturn) {
        waiting.push({ bytes: begun, arrived: undefined });
      }
      open ??= waiting.length > 0 ? begin(true) : undefined;
      if (open) return feedOpen(open);
      // Nothing of them could be read.
      early += waitingLines;
      waitingLines = 0;
      waiting = [];
      return nothing;
    },
    reading() {
      const told = open?.reading() ?? notBegun;
      return { ...told, damagedLines: told.damagedLines + early };
    },
  };
}

const nothing: LiveSamples = { time: new Float64Array(), signal: new Float64Array(), text: '' };
const notBegun: LiveReading = {
  isChecked: false,
  rows: 0,
  damagedLines: 0,
  gaps: [],
  gapCount: 0,
  savedAs: {},
};

/** Lines whose columns are known. */
interface OpenLines {
  feed(bytes: Uint8Array, arrived: Seconds | undefined): void;
  lost(): void;
  take(): LiveSamples;
  reading(): LiveReading;
}

function openLines(layout: RowLayout, isChecked: boolean): OpenLines {
  const roles = rolesOf(layout);
  const values = new Float64Array(roles.length);
  const bounds = fieldBounds(layout.fields);
  const delimiter = layout.delimiter.charCodeAt(0);
  const unit = layout.columns.time?.unit;
  const rate = layout.sampleRate;
  const clock = stampClock<LiveRow>(unit ? periods[unit] : [], isChecked || !unit);
  const saved = savedRows(layout, roles);
  let scratch = new Uint8Array(256);
  let counted = 0;
  let shift = 0;
  let before: Seconds | undefined;
  let isDamaged = false;
  let isLost = false;
  let running: RunningClock | undefined;
  let rows = 0;
  let damagedLines = 0;
  let gaps: Gap[] = [];
  let gapCount = 0;

  const damage = (): void => {
    damagedLines += 1;
    isDamaged = true;
    // It was a sample too.
    counted += 1;
  };

  /** The content of a line, where its check fits, with a line end of its own. */
  const unchecked = (bytes: Uint8Array, start: number, end: number): Uint8Array | undefined => {
    const content = checkedEnd(bytes, start, end);
    if (content < 0) return undefined;
    const length = content - start;
    if (length >= scratch.length) scratch = new Uint8Array(2 * length);
    scratch.set(bytes.subarray(start, content));
    scratch[length] = lineFeed;
    return scratch.subarray(0, length + 1);
  };

  /** The stamp of a row that has none: its number by the rate, and what was lost before it as long as its arrival tells. */
  const countedStamp = (arrived: Seconds | undefined): Seconds => {
    if (isLost && arrived !== undefined && before !== undefined) {
      shift += Math.max(0, arrived - before - 1 / rate!);
    }
    before = arrived;
    return counted++ / rate! + shift;
  };

  /** The stamp of a row; a clock carries on past midnight. Undefined where one with a date follows one without. */
  const stampOf = (bytes: Uint8Array): Seconds | undefined => {
    if (unit !== 'clock') return values[0]!;
    const next = nextTime(
      clockTime(fieldText(bytes, bounds, layout.columns.time!.index))!,
      running,
    );
    if (!next) return undefined;
    const stamp = secondsOf(next);
    // A time that leaps may be damaged: the clock itself goes on from the one before.
    if (!running || Math.abs(stamp - secondsOf(running)) < longestLeap) running = next;
    return stamp;
  };

  const readLine = (bytes: Uint8Array, start: number, arrived: Seconds | undefined): void => {
    scanFields(bytes, start, delimiter, bounds);
    if (isHeading(bytes, start, bounds.end, layout)) return;
    if (!readRow(bytes, bounds, layout, roles, values)) {
      damage();
      return;
    }
    const isRead = values.subarray(1).every(Number.isFinite);
    const reading: NoReading | undefined = isRead
      ? undefined
      : noReadingIn(bytes, bounds, layout, values, roles);
    const stamp = unit ? stampOf(bytes) : countedStamp(arrived);
    if (stamp === undefined) {
      damage();
      return;
    }
    rows += 1;
    const placed = clock.next({
      stamp,
      ...(arrived !== undefined && { arrived }),
      afterDamage: isDamaged,
      row: { values: Array.from(values), ...(reading && { reading }) },
    });
    isDamaged = false;
    isLost = false;
    for (const row of placed) saved.add(row);
  };

  return {
    feed(bytes, arrived) {
      for (let start = 0; start < bytes.length; ) {
        const next = nextLine(bytes, start);
        const end = contentEnd(bytes, start, next);
        if (end > start) {
          if (!isChecked) readLine(bytes, start, arrived);
          else {
            const content = unchecked(bytes, start, end);
            if (content) readLine(content, 0, arrived);
            else damage();
          }
        }
        start = next;
      }
      const found = clock.takeGaps();
      gapCount += found.length;
      gaps = [...gaps, ...found].slice(-gapsKept);
    },
    lost() {
      isDamaged = true;
      isLost = true;
    },
    take: () => saved.take(),
    reading() {
      return {
        columns: layout.columns,
        isChecked,
        rows: rows - clock.strays(),
        damagedLines: damagedLines + clock.strays(),
        gaps,
        gapCount,
        savedAs: saved.savedAs,
      };
    },
  };
}

function beginsLikeHeading(bytes: Uint8Array): boolean {
  const byte = bytes[0] ?? 0;
  const letter = byte | 0x20;
  // A quote, the sign of a remark, or a mark of the text's coding.
  return (letter >= 0x61 && letter <= 0x7a) || [0x22, 0x23, 0x25, 0xef].includes(byte);
}

const decoder = new TextDecoder();

function linesOf(bytes: Uint8Array, isChecked: boolean): readonly string[] {
  const lines: string[] = [];
  for (let start = 0; start < bytes.length; ) {
    const next = nextLine(bytes, start);
    const end = contentEnd(bytes, start, next);
    const content = isChecked ? checkedEnd(bytes, start, end) : end;
    if (content > start) lines.push(decoder.decode(bytes.subarray(start, content)));
    start = next;
  }
  return lines;
}
