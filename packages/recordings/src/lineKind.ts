import type { DecimalSign } from './delimitedOptions.js';
import { isNumber } from './isNumber.js';

/** A row holds two numbers or more; a damaged row lost some; everything else that is written is text. */
export type LineKind = 'row' | 'damaged' | 'text' | 'blank';

/** What recorders write in the place of a reading: over range, no value. */
const noReading =
  /^([+-]?(ol|o\.l|ovl|over|overload|overrange|inf|infinity|∞)|-+|n\/?a|nan|null|none|#n\/a)?$/i;

/** Tells what a line is, going by its fields. */
export function lineKind(cells: readonly string[], decimal: DecimalSign): LineKind {
  const written = cells.filter((cell) => cell !== '');
  if (written.length === 0) return cells.length > 1 ? 'damaged' : 'blank';
  const numbers = written.filter((cell) => isNumber(cell, decimal)).length;
  if (numbers >= 2) return 'row';
  if (numbers === 0) return 'text';
  const others = written.filter((cell) => !isNumber(cell, decimal));
  const startsWithNumber = others.length === 0 || written[0] !== others[0];
  return startsWithNumber || others.every(isNoReading) ? 'damaged' : 'text';
}

/** Whether a field says that there was no reading. */
export function isNoReading(cell: string): boolean {
  return noReading.test(cell);
}
