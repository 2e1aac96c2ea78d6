import type { DecimalSign } from './delimitedOptions.js';
import { scanNumber } from './scanNumber.js';

const encoder = new TextEncoder();
/** Longer fields than this are no numbers that anybody writes; they take an array of their own. */
const room = new Uint8Array(64);

/** Whether a field is a number under a decimal sign; the same scanner decides as for the rows. */
export function isNumber(cell: string, decimal: DecimalSign): boolean {
  // A character makes three bytes of UTF-8 at the most.
  const bytes =
    3 * cell.length <= room.length
      ? room.subarray(0, encoder.encodeInto(cell, room).written)
      : encoder.encode(cell);
  return !Number.isNaN(scanNumber(bytes, 0, bytes.length, decimal.charCodeAt(0), 0));
}
