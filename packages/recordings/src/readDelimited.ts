import { InputError, type Sweep } from '@truesweep/core';
import { chooseColumns, type ReadColumns } from './chooseColumns.js';
import {
  checkOptions,
  type DecimalSign,
  type DelimitedOptions,
  type Delimiter,
} from './delimitedOptions.js';
import { findDialect } from './findDialect.js';
import { readTable } from './readTable.js';
import { readText, type TextEncoding } from './readText.js';
import { refuseNoRows } from './refuseNoRows.js';
import { scanRows } from './scanRows.js';

/** How a text file was read, so that a person can check it. */
export interface DelimitedReading {
  readonly encoding: TextEncoding;
  readonly delimiter: Delimiter;
  readonly decimal: DecimalSign;
  /** Lines before the first row of numbers. */
  readonly headerLines: number;
  readonly columns: ReadColumns;
  /** Rows of numbers, which is the number of samples. */
  readonly rows: number;
  /** Further rows, left out because they hold no reading: an empty field, `OL`, `NaN` and their like. */
  readonly withoutReading: number;
}

/** A sweep read from delimited text, and how it was read. */
export interface DelimitedRecording {
  readonly sweep: Sweep;
  readonly reading: DelimitedReading;
}

/** How much of a file is looked at to find out how it is written, in bytes. */
const headSize = 65_536;

/**
 * Reads a recorded sweep from delimited text (UTF-8, UTF-16, or the western single-byte code): one row a sample, a column of times and one of
 * voltages. Delimiter, decimal sign, headings, columns and units are found out from the first 64 KB
 * unless the options say them; lines before the table are passed over. Without headings the first
 * two columns of numbers are time and signal, in s and V.
 *
 * Units are converted in the text of each number, so that 1500 ms is exactly 1.5 s. Equal times in
 * a row are kept as they are. A wrong file is refused as a whole.
 *
 * @param input The bytes of the file, or its text.
 * @returns The sweep in s and V, and how the file was read.
 * @throws InputError with `path` the name of the file and `place` its line and column: `empty-file`,
 * `binary-file`, `no-numbers`, `one-column`, `one-sample`, `missing-field`, `extra-field`,
 * `not-a-number`, `not-finite`, `time-backwards`, `ambiguous-comma`, `heading-mismatch`,
 * `unknown-unit`, `no-time-column`, `no-signal-column`; for an option, with its name as `path`:
 * `not-one-of`, `no-such-column`, `ambiguous-column`, `same-column`.
 *
 * @example
 * const text = 'time (ms);signal (V)\n0;0,512\n1500;0,518\n';
 * const { sweep, reading } = readDelimited(text, { name: 'idle.csv' });
 * sweep.time[1] // => 1.5
 * sweep.signal[1] // => 0.518
 * reading.delimiter // => ';'
 */
export function readDelimited(
  input: Uint8Array | string,
  options: DelimitedOptions = {},
): DelimitedRecording {
  checkOptions(options);
  const path = options.name ?? 'recording';
  const given = typeof input === 'string' ? new TextEncoder().encode(input) : input;
  const { bytes, start, encoding } = readText(given, path);
  const lines = headLines(bytes, start);
  const dialect = findDialect(lines, options) ?? refuseNoRows(lines, options, path);
  const table = readTable(lines, dialect, options, path);
  const columns = chooseColumns(table, options, path);
  const { fields } = table;
  const { withoutReading, ...sweep } = scanRows(
    bytes,
    start,
    { ...dialect, fields, columns },
    path,
  );
  if (sweep.time.length < 2) refuseOne(dialect.firstRow, path);
  const { delimiter, decimal, firstRow } = dialect;
  const reading = {
    encoding,
    delimiter,
    decimal,
    headerLines: firstRow,
    columns,
    rows: sweep.time.length,
    withoutReading,
  };
  return { sweep, reading };
}

/** The whole lines of the head of the file. */
function headLines(bytes: Uint8Array, start: number): readonly string[] {
  const head = bytes.subarray(start, start + headSize);
  const text = new TextDecoder().decode(head);
  const lines = text.split(/\r\n|\n|\r/);
  return start + head.length < bytes.length && lines.length > 1 ? lines.slice(0, -1) : lines;
}

function refuseOne(firstRow: number, path: string): never {
  throw new InputError(
    'one-sample',
    path,
    'The file holds one sample only; a sweep needs two or more rows of time and voltage.',
    { line: firstRow + 1, column: 1 },
  );
}
