import { InputError, type UnreadRows } from '@truesweep/core';
import { type ClockTime, clockTime, nextTime, type RunningClock, secondsOf } from './clockTime.js';
import { type ColumnRole, unitPowers } from './delimitedOptions.js';
import { fieldError } from './fieldError.js';
import { isNoReading } from './lineKind.js';
import { placeInLine } from './placeInLine.js';
import { refuseControls } from './refuseControls.js';
import { fieldBounds, isHeading, noReadingIn, readRow, rolesOf, scaleOf } from './rowFields.js';
import type { RowLayout } from './rowLayout.js';
import { type FieldBounds, fieldText, scanFields } from './scanFields.js';
import { type PlainRow, type SampleColumns, scanPlainRows } from './scanPlainRow.js';
import { longestLine, wholeLines } from './wholeLines.js';

/** Samples of a recording: times in s, voltages in V, positions as written. */
export interface Samples {
  /** When each was taken, s, never decreasing. */
  readonly time: Float64Array;
  /** The wiper's voltages, V. */
  readonly signal: Float64Array;
  /** Voltages across the sensor's end terminals, V; left out where no column was named. */
  readonly supply?: Float64Array;
  /** The second track's voltages, V; left out where no column was named. */
  readonly second?: Float64Array;
  /** The shaft's positions as written; left out where no column was named. */
  readonly position?: Float64Array;
  /** Rows without a reading between these samples; left out where there are none. */
  readonly unread?: readonly UnreadRows[];
}

/** What was counted while rows were read. */
export interface RowCounts {
  /** Rows that hold a sample, 0 or more. */
  readonly rows: number;
  /** Rows that hold no reading, or not all: empty, over range, or not a number. The sweep says where they stand; 0 or more. */
  readonly withoutReading: number;
  /** Lines of headings that stood again between the rows, 0 or more. */
  readonly repeatedHeadings: number;
  /** Lines of text below the last row, 0 or more. */
  readonly footerLines: number;
}

type Writable<Plain> = { -readonly [field in keyof Plain]: Plain[field] };

/** Reads rows that come in pieces. */
export interface RowScanner {
  /** Reads the rows that these bytes complete. */
  scan(bytes: Uint8Array): void;
  /** Reads the last row, which may want its line end. */
  end(): RowCounts;
  /** Hands out the samples that were read so far, and lets go of them. */
  take(): Samples;
}

/**
 * Reads the rows in one pass over the bytes. A row that lacks a reading is told apart from the samples; refused are the first field that
 * is missing or no number, the first row with a field too many, and time that runs backwards. Text between the rows is refused
 * too, unless it is the headings again; text below the last row is passed over.
 *
 * @param firstLine The number of the first line that is scanned, counted from 1.
 * @param size About how many bytes will be scanned, where that is known.
 */
export function rowScanner(
  layout: RowLayout,
  firstLine: number,
  path: string,
  size?: number,
): RowScanner {
  const roles = rolesOf(layout);
  const row = plainRow(layout, roles);
  const { values } = row;
  const scales = roles.map((role) => scaleOf(layout, role));
  const rate = layout.sampleRate ?? 0;
  const isOnClock = layout.columns.time?.unit === 'clock';
  const bounds = fieldBounds(layout.fields);
  const samples: SampleColumns = {
    columns: roles.map(() => new Float64Array(0)),
    kept: 0,
    previous: Number.NEGATIVE_INFINITY,
  };
  let line = firstLine;
  let rows = 0;
  let withoutReading = 0;
  let repeatedHeadings = 0;
  let headingsAt = 0;
  let footerLines = 0;
  let footer: InputError | undefined;
  let unread: Writable<UnreadRows>[] = [];
  let clock: RunningClock | undefined;
  let scanned = 0;
  let isTaken = false;

  /** Reads the values of a line field by field; whether it is a row. */
  const readFields = (bytes: Uint8Array, start: number): boolean => {
    if (bounds.count <= 1 && bounds.used === 0) return false;
    refuseControls(bytes, { line, start }, bounds.end, path);
    if (layout.headingLines.length > 0 && isHeading(bytes, start, bounds.end, layout)) {
      repeatedHeadings += 1;
      headingsAt = line;
      footer = undefined;
      footerLines = 0;
      return false;
    }
    if (!readRow(bytes, bounds, layout, roles, values)) {
      const error = fieldError(bytes, { line, start }, bounds, layout, path);
      if (!isText(bytes, bounds, layout, values)) throw footer ?? error;
      footer ??= error;
      footerLines += 1;
      return false;
    }
    if (isOnClock) values[0] = onClock(clockAt(bytes, bounds, layout), bytes, start);
    if (values[0]! < samples.previous && rate === 0) {
      const place = placeOfTime(bytes, start);
      if (isOnClock && isSetBack(samples.previous - values[0]!)) refuseSetBack(place, path);
      refuseTime(place, values[0]!, samples.previous, headingsAt, path);
    }
    return true;
  };

  const placeOfTime = (bytes: Uint8Array, start: number) =>
    placeInLine(bytes, { line, start }, bounds.starts[layout.columns.time!.index]!);

  const onClock = (time: ClockTime, bytes: Uint8Array, start: number): number => {
    const next = nextTime(time, clock);
    if (!next) {
      throw new InputError(
        'mixed-times',
        path,
        `On line ${line} a time ${time.day === undefined ? 'without' : 'with'} a date follows one ${time.day === undefined ? 'with' : 'without'}; all times must have a date or none.`,
        placeOfTime(bytes, start),
      );
    }
    clock = next;
    return secondsOf(next);
  };

  const append = (): void => {
    makeRoom(samples.kept + 1);
    for (const [place, value] of values.entries()) samples.columns[place]![samples.kept] = value;
    samples.kept += 1;
    rows += 1;
  };

  /** Notes a row without a reading; several of one kind in a row are one entry. */
  const noteUnread = (bytes: Uint8Array): void => {
    const [time] = values as unknown as [number];
    const seconds = rate > 0 ? time : time * scales[0]!;
    const reading = noReadingIn(bytes, bounds, layout, values, roles);
    const last = unread.at(-1);
    if (last && last.reading === reading && last.after === samples.kept) {
      last.rows += 1;
      last.end = seconds;
    } else unread.push({ reading, rows: 1, after: samples.kept, start: seconds, end: seconds });
    withoutReading += 1;
  };

  const makeRoom = (least: number, wanted = 0): void => {
    const room = samples.columns[0]!.length;
    if (room >= least) return;
    samples.columns = enlarged(samples.columns, least, wanted || 2 * room);
  };

  /** Makes room for the rows of a piece; where the file's size is known for all that follow, as many as this piece tells. */
  const makeRoomFor = (bytes: Uint8Array): void => {
    const here = expectedRows(bytes);
    const left = size === undefined || isTaken ? 0 : size - scanned;
    const ahead = samples.kept + Math.ceil((here * left) / Math.max(1, bytes.length));
    makeRoom(samples.kept + here, left > 0 && ahead <= mostRoom ? ahead : 0);
    scanned += bytes.length;
  };

  /** Reads the rows that can be read straight through; where the first that can't begins. */
  const scanPlain = (bytes: Uint8Array, at: number): number => {
    const from = samples.kept;
    makeRoom(from + 1);
    const next = scanPlainRows(bytes, at, row, samples);
    const [times] = samples.columns;
    for (let index = from; rate > 0 && index < samples.kept; index++) {
      times![index] = (rows + withoutReading + index - from) / rate;
    }
    line += samples.kept - from;
    rows += samples.kept - from;
    return next;
  };

  const scanLines = (bytes: Uint8Array): void => {
    const before = samples.kept;
    makeRoomFor(bytes);
    let at = 0;
    while (at < bytes.length) {
      const next = isOnClock || footer ? at : scanPlain(bytes, at);
      if (next > at) {
        at = next;
        continue;
      }
      scanFields(bytes, at, row.delimiter, bounds);
      if (bounds.end - at > longestLine) refuseEndless(line, path);
      const isRow = readFields(bytes, at);
      at = bounds.next;
      line += 1;
      if (!isRow) continue;
      if (footer) throw footer;
      if (rate > 0) values[0] = (rows + withoutReading) / rate;
      else samples.previous = values[0]!;
      if (values.every(Number.isFinite)) append();
      else noteUnread(bytes);
    }
    for (const [place, scale] of scales.entries()) {
      if (scale === 1) continue;
      const column = samples.columns[place]!;
      for (let at = before; at < samples.kept; at++) column[at] = column[at]! * scale;
    }
  };

  const lines = wholeLines(() => refuseEndless(line, path));
  return {
    scan(bytes) {
      for (const run of lines.next(bytes)) scanLines(run);
    },
    end() {
      const last = lines.rest();
      if (last.length > 0) scanLines(last);
      return { rows, withoutReading, repeatedHeadings, footerLines };
    },
    take() {
      const taken: Record<string, unknown> = Object.fromEntries(
        roles.map((role, place) => [role, samples.columns[place]!.subarray(0, samples.kept)]),
      );
      samples.columns = roles.map(() => new Float64Array(0));
      samples.kept = 0;
      isTaken = true;
      if (unread.length > 0) taken.unread = unread;
      unread = [];
      return taken as unknown as Samples;
    },
  };
}

/** Room for more rows than this is made as they come: a size that was told wrong must not take the memory of all programs. */
const mostRoom = 2 ** 29;

/** So many rows are measured to tell how many there are. */
const measuredRows = 1000;

/** About as many rows as the bytes hold, rather more than fewer. */
function expectedRows(bytes: Uint8Array): number {
  let [at, rows] = [0, 0];
  for (; at < bytes.length && rows < measuredRows; rows++) {
    const end = bytes.indexOf(0x0a, at);
    at = end < 0 ? bytes.length : end + 1;
  }
  return Math.ceil((1.05 * rows * bytes.length) / Math.max(1, at)) + 16;
}

/** What is read from a row, and by what powers of ten. */
function plainRow(
  { delimiter, decimal, fields, columns }: RowLayout,
  roles: readonly ColumnRole[],
): PlainRow {
  const places = new Int8Array(fields).fill(-1);
  for (const [place, role] of roles.entries()) {
    const column = columns[role];
    if (column) places[column.index] = place;
  }
  return {
    delimiter: delimiter.charCodeAt(0),
    decimal: decimal.charCodeAt(0),
    places,
    shifts: Int8Array.from(roles, (role) => {
      const column = columns[role];
      return column && 'unit' in column ? unitPowers[column.unit] : 0;
    }),
    values: new Float64Array(roles.length),
  };
}

function clockAt(bytes: Uint8Array, bounds: FieldBounds, { columns }: RowLayout): ClockTime {
  return clockTime(fieldText(bytes, bounds, columns.time!.index))!;
}

/**
 * Whether a line that is no row is no damaged row either, but text: it begins with a word, or neither its time nor its signal is a number
 * or stands for one.
 */
function isText(
  bytes: Uint8Array,
  bounds: FieldBounds,
  { columns }: RowLayout,
  values: Float64Array,
): boolean {
  const { index } = columns.time ?? columns.signal;
  if (index >= bounds.count) return true;
  const first = fieldText(bytes, bounds, index);
  if (isNoReading(first) || (columns.time && Number.isFinite(values[0]))) return false;
  return /^\p{L}{3}/u.test(first) || !Number.isFinite(values[1]);
}

/** The columns with more room: as much as is wanted where the system gives it, else the least. Rooms that no row is written to take no memory. */
function enlarged(
  columns: readonly Float64Array<ArrayBuffer>[],
  least: number,
  wanted: number,
): Float64Array<ArrayBuffer>[] {
  const grown = (room: number) =>
    columns.map((column) => {
      const larger = new Float64Array(room);
      larger.set(column);
      return larger;
    });
  try {
    return grown(Math.max(least, wanted));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return grown(least);
  }
}

function refuseEndless(line: number, path: string): never {
  throw new InputError(
    'endless-line',
    path,
    `Line ${line} is longer than 64 KB; every sample must stand in a line of its own.`,
    { line, column: 1 },
  );
}

/** Where summer time ends a clock is set back by an hour, and the next sample follows soon. */
const setBack = { most: 3600, least: 3500 };

function isSetBack(seconds: number): boolean {
  return seconds > setBack.least && seconds <= setBack.most;
}

function refuseSetBack(
  place: { readonly line: number; readonly column: number },
  path: string,
): never {
  throw new InputError(
    'clock-set-back',
    path,
    `On line ${place.line} the clock goes back by an hour, as it does where summer time ends; export the times with their zone, in UTC, or as seconds.`,
    place,
  );
}

function refuseTime(
  place: { readonly line: number; readonly column: number },
  time: number,
  previous: number,
  headingsAt: number,
  path: string,
): never {
  const again =
    headingsAt > 0
      ? ` On line ${headingsAt} the headings stand again: another recording begins there; split the file.`
      : '';
  throw new InputError(
    'time-backwards',
    path,
    `Time runs backwards on line ${place.line}: ${time} s follows ${previous} s; times must stay equal or rise from row to row.${again}`,
    place,
  );
}
