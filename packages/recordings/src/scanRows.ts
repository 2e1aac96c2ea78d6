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
 * Reads the rows in one pass over the bytes, from the first row on. A row whose signal says that there was no reading is left out,
 * so that a gap shows; refused are the first field that is missing or no number, the first row with a field too many, and time that
 * runs backwards.
 */
export function scanRows(
  bytes: Uint8Array,
  start: number,
  layout: RowLayout,
  path: string,
): Samples {
  const { time: timeColumn, signal: signalColumn, supply: supplyColumn } = layout.columns;
  const delimiter = layout.delimiter.charCodeAt(0);
  const decimal = layout.decimal.charCodeAt(0);
  const timeShift = unitPowers[timeColumn.unit];
  const signalShift = unitPowers[signalColumn.unit];
  const supplyShift = unitPowers[supplyColumn?.unit ?? 'V'];
  const bounds = fieldBounds(layout.fields + 1);
  let count = 0;
  let withoutReading = 0;
  let lineStart = skipLines(bytes, start, layout.firstRow);
  const rows = expectedRows(bytes, lineStart);
  let time = new Float64Array(rows);
  let signal = new Float64Array(rows);
  let supply = new Float64Array(supplyColumn ? rows : 0);
  let previous = Number.NEGATIVE_INFINITY;
  const plain = plainRow(layout);
  const { values } = plain;
  for (; lineStart < bytes.length; lineStart = bounds.next) {
    const next = scanPlainRow(bytes, lineStart, plain);
    if (next > 0 && values[0]! >= previous) {
      if (count === time.length) {
        time = grown(time);
        signal = grown(signal);
        if (supplyColumn) supply = grown(supply);
      }
      previous = values[0]!;
      time[count] = previous;
      signal[count] = values[1]!;
      if (supplyColumn) supply[count] = values[2]!;
      count += 1;
      bounds.next = next;
      continue;
    }
    scanFields(bytes, lineStart, delimiter, bounds);
    if (bounds.count <= 1 && bounds.used === 0) continue;
    const timeFrom = bounds.starts[timeColumn.index]!;
    const signalFrom = bounds.starts[signalColumn.index]!;
    const t = scanNumber(bytes, timeFrom, bounds.ends[timeColumn.index]!, decimal, timeShift);
    const v = scanNumber(bytes, signalFrom, bounds.ends[signalColumn.index]!, decimal, signalShift);
    const isWhole = bounds.count >= layout.fields && bounds.used <= layout.fields;
    const isReading = Number.isFinite(v);
    let u = 0;
    if (supplyColumn) {
      const [from, to] = [bounds.starts[supplyColumn.index]!, bounds.ends[supplyColumn.index]!];
      u = scanNumber(bytes, from, to, decimal, supplyShift);
    }
    if (
      !isWhole ||
      !Number.isFinite(t) ||
      !Number.isFinite(u) ||
      !(isReading || lacksReading(bytes, bounds, layout))
    ) {
      refuseField(bytes, start, bounds, layout, path);
    }
    if (t < previous) refuseTime(bytes, start, timeFrom, t, previous, path);
    if (!isReading) {
      previous = t;
      withoutReading += 1;
      continue;
    }
    if (count === time.length) {
      time = grown(time);
      signal = grown(signal);
      if (supplyColumn) supply = grown(supply);
    }
    time[count] = t;
    signal[count] = v;
    if (supplyColumn) supply[count] = u;
    previous = t;
    count += 1;
  }
  return {
    time: time.subarray(0, count),
    signal: signal.subarray(0, count),
    ...(supplyColumn && { supply: supply.subarray(0, count) }),
    withoutReading,
  };
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

/** The layout of a row without spaces and quotes; a run of spaces parts fields as one, so such rows are never plain. */
function plainRow({ delimiter, decimal, fields, columns }: RowLayout): PlainRow {
  const roles = [columns.time, columns.signal, ...(columns.supply ? [columns.supply] : [])];
  const places = new Int8Array(fields).fill(-1);
  for (const [place, { index }] of roles.entries()) places[index] = place;
  return {
    delimiter: delimiter.charCodeAt(0),
    decimal: decimal.charCodeAt(0),
    places,
    shifts: Int8Array.from(roles, ({ unit }) => unitPowers[unit]),
    values: new Float64Array(3),
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
  at: number,
  time: number,
  previous: number,
  path: string,
): never {
  const place = placeAt(bytes, start, at);
  throw new InputError(
    'time-backwards',
    path,
    `Time runs backwards on line ${place.line}: ${time} s follows ${previous} s; times must stay equal or rise from row to row.`,
    place,
  );
}
