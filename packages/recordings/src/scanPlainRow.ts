import { exactPowers, largestMantissa } from './scanNumber.js';

const lineFeed = 0x0a;
const carriageReturn = 0x0d;
const space = 0x20;
const quote = 0x22;
const minus = 0x2d;
const zero = 0x30;
const nine = 0x39;

/** What a row must be like to be read straight through. */
export interface PlainRow {
  readonly delimiter: number;
  readonly decimal: number;
  /** For each field the place of its value among the values, or −1 where it is passed over. */
  readonly places: Int8Array;
  /** Power of ten that each value is multiplied by. */
  readonly shifts: Int8Array;
  /** The values of the row, by their places. */
  readonly values: Float64Array;
}

/**
 * Reads a row of plain decimals in one pass: no spaces, quotes or exponents, 15 figures at most. Such rows are nearly all there are;
 * any other is left to the scanner that knows them all, to which this one agrees to the last bit.
 *
 * @returns Where the next line begins, or −1 for any other row.
 */
export function scanPlainRow(bytes: Uint8Array, start: number, row: PlainRow): number {
  const { delimiter, decimal, places, shifts, values } = row;
  let at = start;
  for (let field = 0; field < places.length; field++) {
    const place = places[field]!;
    if (place < 0) {
      const from = at;
      at = passedOver(bytes, at, delimiter);
      // Two spaces part fields as one does; here they would pass for an empty field between them.
      if (at === from && delimiter === space) return -1;
    } else {
      let byte = bytes[at]!;
      const negative = byte === minus;
      if (negative) byte = bytes[++at]!;
      const first = at;
      let mantissa = 0;
      let power = shifts[place]!;
      for (; byte >= zero && byte <= nine; byte = bytes[++at]!) {
        mantissa = mantissa * 10 + byte - zero;
      }
      let figures = at - first;
      if (byte === decimal) {
        const point = ++at;
        byte = bytes[at]!;
        for (; byte >= zero && byte <= nine; byte = bytes[++at]!) {
          mantissa = mantissa * 10 + byte - zero;
        }
        figures += at - point;
        power -= at - point;
      }
      if (figures === 0 || mantissa >= largestMantissa || power < -22 || power > 22) return -1;
      const size = power < 0 ? mantissa / exactPowers[-power]! : mantissa * exactPowers[power]!;
      values[place] = negative ? -size : size;
    }
    if (field < places.length - 1 && bytes[at++] !== delimiter) return -1;
  }
  if (bytes[at] === carriageReturn) at++;
  return bytes[at] === lineFeed ? at + 1 : -1;
}

/** The end of a field that is passed over. A quote stops it, so that the row is not taken for a plain one. */
function passedOver(bytes: Uint8Array, start: number, delimiter: number): number {
  let at = start;
  for (; at < bytes.length; at++) {
    const byte = bytes[at];
    if (byte === delimiter || byte === lineFeed || byte === carriageReturn || byte === quote) break;
  }
  return at;
}

/** Samples that rows are added to, and the time of the last row. */
export interface SampleColumns {
  columns: Float64Array<ArrayBuffer>[];
  kept: number;
  previous: number;
}

/**
 * Reads rows straight through as long as they are plain, their times don't run backwards, and the columns have room.
 *
 * @returns Where the first row that isn't begins.
 */
export function scanPlainRows(
  bytes: Uint8Array,
  start: number,
  row: PlainRow,
  samples: SampleColumns,
): number {
  const { values } = row;
  const { columns } = samples;
  const room = columns[0]!.length;
  let { kept, previous } = samples;
  let at = start;
  while (at < bytes.length && kept < room) {
    const next = scanPlainRow(bytes, at, row);
    if (next < 0 || values[0]! < previous) break;
    for (let place = 0; place < values.length; place++) columns[place]![kept] = values[place]!;
    previous = values[0]!;
    kept += 1;
    at = next;
  }
  samples.kept = kept;
  samples.previous = previous;
  return at;
}
