import { InputError, type Sweep } from '@truesweep/core';
import { carryChecks, checkedLines } from './checkedLines.js';
import type { ReadColumns } from './chooseColumns.js';
import {
  checkOptions,
  type DecimalSign,
  type DelimitedOptions,
  type Delimiter,
} from './delimitedOptions.js';
import { findEncoding, markLength, type TextEncoding } from './findEncoding.js';
import { dialectOf, layoutOf, type ToldRate } from './findLayout.js';
import { joinedBytes } from './joinedBytes.js';
import { refuseControls } from './refuseControls.js';
import { refuseNoRows } from './refuseNoRows.js';
import { type RowCounts, type RowScanner, rowScanner, type Samples } from './rowScanner.js';
import { checkBytes, shown } from './shown.js';

/** How a text file was read, so that a person can check it. */
export interface DelimitedReading extends RowCounts {
  /** How its characters are coded. */
  readonly encoding: TextEncoding;
  /** What stood between the fields. */
  readonly delimiter: Delimiter;
  /** The decimal sign of its numbers. */
  readonly decimal: DecimalSign;
  /** Lines before the first row of numbers, 0 or more. */
  readonly headerLines: number;
  /** Which columns were read, and why. */
  readonly columns: ReadColumns;
  /** Samples per second, above 0, and who told them; only where there was no column of times. */
  readonly sampleRate?: ToldRate;
  /**
   * Lines that were passed over because their check, an asterisk and the CRC-16 of the line in four hexadecimal digits, did not fit: 0 or more;
   * only where the lines carry checks.
   */
  readonly damagedLines?: number;
}

/** A sweep read from delimited text, and how it was read. */
export interface DelimitedRecording {
  /** The samples, in s and V. */
  readonly sweep: Sweep;
  /** The second track's voltages, V; left out where its column was not named. */
  readonly second?: Float64Array;
  /** The shaft's positions as written; left out where their column was not named. */
  readonly position?: Float64Array;
  /** How the file was read. */
  readonly reading: DelimitedReading;
}

/** Reads a text file that comes in pieces. */
export interface DelimitedReader {
  /** Takes the next bytes of the file, any number. They may be changed once this returns: a program can read all pieces into one place. */
  feed(bytes: Uint8Array): void;
  /** Hands out the samples that were read so far, and lets go of them, so that a long recording need not fit into memory. */
  take(): Samples;
  /** Reads what is left; the samples are those that were not taken before. */
  end(): DelimitedRecording;
}

/** How much of a file is looked at to find out how it is written, in bytes. */
const headSize = 65_536;

/**
 * Reads delimited text that comes in pieces, cut anywhere; otherwise as {@link readDelimited}, with the same errors.
 *
 * @param size Size of the whole file, bytes, 0 or more, where it is known beforehand. Room for all of its samples is then made at once, as
 * its first rows tell how many there are, so that reading takes hardly more memory than the samples; it need not be exact. When left out, room is
 * made as the rows come, which for a moment takes three times as much.
 *
 * @example
 * const reader = delimitedReader({ name: 'idle.csv' });
 * for (const piece of ['time (ms),sig', 'nal (V)\n0,0.5', '12\n1500,0.518\n']) reader.feed(new TextEncoder().encode(piece));
 * reader.end().sweep.signal[0] // => 0.512
 */
export function delimitedReader(options: DelimitedOptions = {}, size?: number): DelimitedReader {
  checkOptions(options);
  if (size !== undefined) checkSize(size);
  const path = options.name ?? 'recording';
  const pieces: Uint8Array[] = [];
  let held = 0;
  let open: Opened | undefined;

  const begin = (isWhole: boolean): Opened => {
    const bytes = joinedBytes(pieces);
    pieces.length = 0;
    open = opened(bytes.subarray(0, headSize), isWhole, { ...options, name: path }, size);
    open.scanner.scan(open.plain(bytes.subarray(headSize)));
    return open;
  };
  return {
    feed(bytes) {
      checkBytes(bytes, 'bytes');
      if (open) return open.scanner.scan(open.plain(bytes));
      held += bytes.length;
      const isHead = held >= headSize;
      pieces.push(isHead ? bytes : Uint8Array.from(bytes));
      if (isHead) begin(false);
    },
    take() {
      return open ? open.scanner.take() : { time: new Float64Array(), signal: new Float64Array() };
    },
    end() {
      const { scanner, plain, damaged, reading } = open ?? begin(true);
      scanner.scan(plain());
      const counts = { ...scanner.end(), ...(damaged && { damagedLines: damaged() }) };
      if (counts.rows < 2) refuseOne(reading.headerLines, path);
      const { second, position, ...sweep } = scanner.take();
      return {
        sweep,
        ...(second && { second }),
        ...(position && { position }),
        reading: { ...reading, ...counts },
      };
    },
  };
}

/** A file whose head told how it is written. */
interface Opened {
  readonly scanner: RowScanner;
  /** Further bytes as UTF-8 without checks; what is left where there are none. */
  readonly plain: (bytes?: Uint8Array) => Uint8Array;
  /** How many lines were damaged so far, where they carry checks. */
  readonly damaged?: () => number;
  readonly reading: Omit<DelimitedReading, keyof RowCounts | 'damagedLines'>;
}

function opened(
  head: Uint8Array,
  isWhole: boolean,
  options: DelimitedOptions & { readonly name: string },
  size: number | undefined,
): Opened {
  const path = options.name;
  const encoding = findEncoding(head, isWhole, path);
  const recode = recoder(encoding);
  const recoded = recode(head);
  const checks = carryChecks(recoded) ? checkedLines(() => refuseLong(path)) : undefined;
  const bytes = checks
    ? isWhole
      ? joinedBytes([checks.next(recoded), checks.rest()])
      : checks.next(recoded)
    : recoded;
  const start = markLength(bytes);
  const { lines, starts } = headLines(bytes, start, isWhole, path);
  const dialect = dialectOf(lines, options) ?? refuseNoRows(lines, options, path);
  const layout = layoutOf(lines, dialect, options, path);
  const { columns, delimiter, decimal, firstRow } = layout;
  const sampleRate = columns.time ? undefined : dialect.rate;
  const scanner = rowScanner(
    layout,
    firstRow + 1,
    path,
    size === undefined ? undefined : size / (encoding.startsWith('utf-16') ? 2 : 1),
  );
  scanner.scan(bytes.subarray(starts[firstRow]));
  return {
    scanner,
    plain: checks
      ? (more) =>
          more ? checks.next(recode(more)) : joinedBytes([checks.next(recode()), checks.rest()])
      : recode,
    ...(checks && { damaged: checks.damaged }),
    reading: {
      encoding,
      delimiter,
      decimal,
      headerLines: firstRow,
      columns,
      ...(sampleRate && { sampleRate }),
    },
  };
}

function checkSize(size: number): void {
  if (Number.isSafeInteger(size) && size >= 0) return;
  const wrong = `size is ${shown(size)}; it must be a number of bytes, 0 or more.`;
  throw new InputError('not-a-count', 'size', wrong);
}

const nothing = new Uint8Array(0);

/** What makes UTF-8 of pieces of a text. */
function recoder(encoding: TextEncoding): (bytes?: Uint8Array) => Uint8Array {
  if (encoding === 'utf-8') return (bytes = nothing) => bytes;
  const decoder = new TextDecoder(encoding);
  const encoder = new TextEncoder();
  return (bytes) => encoder.encode(decoder.decode(bytes, { stream: bytes !== undefined }));
}

/** The whole lines of the head of the file, and where each begins; refuses what is no text. */
function headLines(bytes: Uint8Array, start: number, isWhole: boolean, path: string) {
  const starts = [start];
  for (let at = start; at < bytes.length; at++) {
    const isEnd = bytes[at] === 0x0a || (bytes[at] === 0x0d && bytes[at + 1] !== 0x0a);
    if (isEnd) starts.push(at + 1);
  }
  for (const [index, from] of starts.entries()) {
    refuseControls(
      bytes,
      { line: index + 1, start: from },
      starts[index + 1] ?? bytes.length,
      path,
    );
  }
  const lines = new TextDecoder().decode(bytes.subarray(start)).split(/\r\n|\n|\r/);
  const isCut = !isWhole && lines.length > 1;
  return { lines: isCut ? lines.slice(0, -1) : lines, starts };
}

function refuseLong(path: string): never {
  throw new InputError(
    'endless-line',
    path,
    'A line is longer than 64 KB; every sample must stand in a line of its own.',
  );
}

function refuseOne(firstRow: number, path: string): never {
  throw new InputError(
    'one-sample',
    path,
    'The file holds one sample only; a sweep needs two or more rows of time and voltage.',
    { line: firstRow + 1, column: 1 },
  );
}
