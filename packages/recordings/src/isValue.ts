import { clockTime } from './clockTime.js';
import type { DecimalSign } from './delimitedOptions.js';
import { isNumber } from './isNumber.js';

/** Whether a field can be a sample's: a number under a decimal sign, or a time on a clock. */
export function isValue(cell: string, decimal: DecimalSign): boolean {
  return isNumber(cell, decimal) || clockTime(cell) !== undefined;
}
