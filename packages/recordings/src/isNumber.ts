import type { DecimalSign } from './delimitedOptions.js';
import { scanNumber } from './scanNumber.js';

const encoder = new TextEncoder();

/** Whether a field is a number under a decimal sign; the same scanner decides as for the rows. */
export function isNumber(cell: string, decimal: DecimalSign): boolean {
  const bytes = encoder.encode(cell);
  return !Number.isNaN(scanNumber(bytes, 0, bytes.length, decimal.charCodeAt(0), 0));
}
