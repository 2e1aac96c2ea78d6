import { InputError } from '@truesweep/core';
import type { ReadColumns } from './chooseColumns.js';
import { unitPowers } from './delimitedOptions.js';
import type { Dialect } from './findDialect.js';
import { isNoReading } from './lineKind.js';
import { placeAt } from './placeAt.js';
import { refuseField } from './refuseField.js';
import { type FieldBounds, fieldText, scanFields } from './scanFields.js';
import { scanNumber } from './scanNumber.js';
import { type PlainRow, scanPlainRow } from './scanPlainRow.js';

/** Where the rows of a file are and what is read from them. */
export interface RowLayout extends Dialect {
  readonly fields: number;
  readonly columns: ReadColumns;
}

/** The samples of a file, in s and V. */
export interface Samples {
  readonly time: Float64Array;
  readonly signal: Float64Array;
  readonly supply?: Float64Array;
  /** Rows that were left out because their signal is no reading: empty, over range, or not a number. */
  readonly withoutReading: number;
}

/**
 * Reads the rows in one pass over the bytes, from the first row on. A row whose signal says that there was no reading is
 * left out, so that a gap shows; refused are the first field that is missing or no number, the first row with a field too
 * many, and time that runs backwards.
 */
export function scanRows(
  bytes: Uint8Array,
  start: number,
  layout: RowLayout,
  path: string,
): Samples {
  const row = plainRow(layout);
  const { values } = row;
  const bounds = fieldBounds(layout.fields + 1);
  let lineStart = skipLines(bytes, start, layout.firstRow);
  let columns = Array.from(values, () => new Float64Array(expectedRows(bytes, lineStart)));
  let count = 0;
  let withoutReading = 0;
  let previous = Number.NEGATIVE_INFINITY;
  while (lineStart < bytes.length) {
    let next = scanPlainRow(bytes, lineStart, row);
    const isPlain = next > 0 && values[0]! >= previous;
    if (!isPlain) {
      scanFields(bytes, lineStart, row.delimiter, bounds);
      next = bounds.next;
    }
    lineStart = next;
    if (!isPlain) {
      if (bounds.count <= 1 && bounds.used === 0) continue;
      readFields(bytes, start, bounds, layout, row, path);
      if (values[0]! < previous) refuseTime(bytes, start, bounds, layout, values, previous, path);
    }
    previous = values[0]!;
    if (!Number.isFinite(values[1]!)) {
      withoutReading += 1;
      continue;
    }
    if (count === columns[0]!.length) columns = columns.map(grown);
    for (let place = 0; place < values.length; place++) columns[place]![count] = values[place]!;
    count += 1;
  }
  const [time, signal, supply] = columns.map((column) => column.subarray(0, count));
  return { time: time!, signal: signal!, ...(supply && { supply }), withoutReading };
}

/** Reads the values of a row whose fields were found; refuses it where one is missing, though not the signal's for want of a reading. */
function readFields(
  bytes: Uint8Array,
  start: number,
  bounds: FieldBounds,
  layout: RowLayout,
  { decimal, places, shifts, values }: PlainRow,
  path: string,
): void {
  let isWhole = bounds.count >= layout.fields && bounds.used <= layout.fields;
  for (const [field, place] of places.entries()) {
    if (place < 0) continue;
    const [from, to] = [bounds.starts[field]!, bounds.ends[field]!];
    values[place] = scanNumber(bytes, from, to, decimal, shifts[place]!);
    isWhole &&=
      Number.isFinite(values[place]) || (place === 1 && lacksReading(bytes, bounds, layout));
  }
  if (!isWhole) refuseField(bytes, start, bounds, layout, path);
}

/** So many rows are measured to tell how many there are. */
const measuredRows = 1000;

/** About as many rows as the bytes from the first one on hold, rather more than fewer. */
function expectedRows(bytes: Uint8Array, firstRow: number): number {
  let [at, rows] = [firstRow, 0];
  for (; at < bytes.length && rows < measuredRows; rows++) {
    const end = bytes.indexOf(0x0a, at);
    at = end < 0 ? bytes.length : end + 1;
  }
  return Math.ceil((1.05 * rows * (bytes.length - firstRow)) / Math.max(1, at - firstRow)) + 16;
}

/** What is read from a row: time, signal, and the supply where there is one. */
function plainRow({ delimiter, decimal, fields, columns }: RowLayout): PlainRow {
  const roles = [columns.time, columns.signal, ...(columns.supply ? [columns.supply] : [])];
  const places = new Int8Array(fields).fill(-1);
  for (const [place, { index }] of roles.entries()) places[index] = place;
  return {
    delimiter: delimiter.charCodeAt(0),
    decimal: decimal.charCodeAt(0),
    places,
    shifts: Int8Array.from(roles, ({ unit }) => unitPowers[unit]),
    values: new Float64Array(roles.length),
  };
}

function lacksReading(bytes: Uint8Array, bounds: FieldBounds, { columns }: RowLayout): boolean {
  const { index } = columns.signal;
  return index < bounds.count && isNoReading(fieldText(bytes, bounds, index));
}

function fieldBounds(size: number): FieldBounds {
  return {
    starts: new Float64Array(size),
    ends: new Float64Array(size),
    count: 0,
    used: 0,
    end: 0,
    next: 0,
  };
}

function grown(values: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(values.length * 2);
  larger.set(values);
  return larger;
}

function skipLines(bytes: Uint8Array, start: number, lines: number): number {
  const bounds = fieldBounds(0);
  let at = start;
  for (let line = 0; line < lines; line++) {
    scanFields(bytes, at, -1, bounds);
    at = bounds.next;
  }
  return at;
}

function refuseTime(
  bytes: Uint8Array,
  start: number,
  bounds: FieldBounds,
  { columns }: RowLayout,
  [time]: Float64Array,
  previous: number,
  path: string,
): never {
  const place = placeAt(bytes, start, bounds.starts[columns.time.index]!);
  throw new InputError(
    'time-backwards',
    path,
    `Time runs backwards on line ${place.line}: ${time} s follows ${previous} s; times must stay equal or rise from row to row.`,
    place,
  );
}
