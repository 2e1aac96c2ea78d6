import type { DecimalSign, Delimiter } from './delimitedOptions.js';
import { lineKind } from './lineKind.js';
import { splitLine } from './splitLine.js';

/** The fields of the first whole rows from a line on: rows without a reading may come before them, as many as there are. */
export function firstWholeRows(
  lines: readonly string[],
  from: number,
  delimiter: Delimiter,
  decimal: DecimalSign,
  least: number,
  most: number,
): readonly (readonly string[])[] {
  const rows: (readonly string[])[] = [];
  for (let at = from; at < lines.length && rows.length < most; at++) {
    const cells = splitLine(lines[at]!, delimiter);
    if (lineKind(cells, decimal, least) === 'row') rows.push(cells);
  }
  return rows;
}
