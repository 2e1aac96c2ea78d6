import type { SweepColumns } from '@truesweep/core';
import type { Point } from './circuitLayout.js';

/** Columns, or usual intervals between samples, without a sample for this long are a gap. */
const gapLength = 3;

/**
 * A recording in pieces without gaps: down and up again in each column, so that a spike of one sample shows.
 *
 * @param left Where the first column begins.
 * @param y Where a reading lies.
 * @param columnsApart How many columns lie between two samples, 1 or more.
 */
export function columnPieces(
  { column, low, high }: SweepColumns,
  left: number,
  y: (volts: number) => number,
  columnsApart: number,
): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  for (let i = 0; i < column.length; i++) {
    const isApart = i === 0 || column[i]! - column[i - 1]! > gapLength * columnsApart;
    if (isApart) found.push([]);
    const at = left + column[i]! + 0.5;
    const [first, second] = i % 2 === 0 ? [low[i]!, high[i]!] : [high[i]!, low[i]!];
    const piece = found.at(-1)!;
    piece.push({ x: at, y: y(first) });
    if (first !== second) piece.push({ x: at, y: y(second) });
  }
  return found;
}
