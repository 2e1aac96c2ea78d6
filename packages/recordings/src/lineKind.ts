import type { NoReading } from '@truesweep/core';
import type { DecimalSign } from './delimitedOptions.js';
import { isValue } from './isValue.js';

/** A row holds the values that one needs; a damaged row lost some; everything else that is written is text. */
export type LineKind = 'row' | 'damaged' | 'text' | 'blank';

/** What recorders write in the place of a reading: over range, no value. */
const noReading =
  /^([+-]?(ol|o\.l|ovl|over|overload|overrange|inf|infinity|∞)|-+|n\/?a|nan|null|none|#n\/a)?$/i;

/** Those of them that say that a reading went beyond the range. */
const beyondRange = /^[+-]?(ol|o\.l|ovl|over|overload|overrange|inf|infinity|∞)$/i;

/**
 * Tells what a line is, going by its fields.
 *
 * @param least How many values a row has at least: a time and a reading, or a reading alone where no times are read.
 */
export function lineKind(cells: readonly string[], decimal: DecimalSign, least: number): LineKind {
  const written = cells.filter((cell) => cell !== '');
  if (written.length === 0) return cells.length > 1 ? 'damaged' : 'blank';
  const values = written.filter((cell) => isValue(cell, decimal)).length;
  if (values >= least && (values > 1 || written.length === values)) return 'row';
  if (values === 0) return 'text';
  const others = written.filter((cell) => !isValue(cell, decimal));
  const startsWithValue = others.length === 0 || written[0] !== others[0];
  return startsWithValue || others.every(isNoReading) ? 'damaged' : 'text';
}

/** Whether a field says that there was no reading. */
export function isNoReading(cell: string): boolean {
  return noReading.test(cell);
}

/** What a field says instead of a reading: that it was beyond a range, or nothing. */
export function noReadingOf(cell: string): NoReading {
  if (!beyondRange.test(cell)) return 'none';
  return cell.startsWith('-') ? 'below-range' : 'above-range';
}
