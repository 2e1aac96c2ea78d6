import {
  type DecimalSign,
  type DelimitedOptions,
  type Delimiter,
  decimalSigns,
  delimiters,
} from './delimitedOptions.js';
import { isValue } from './isValue.js';
import { isNoReading, lineKind } from './lineKind.js';
import { splitLine } from './splitLine.js';

/** How the rows of a file are written, and where they begin. */
export interface Dialect {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalSign;
  /** Index of the first line that is a row of numbers. */
  readonly firstRow: number;
  /** How many values a row has at least: one where no times are read. */
  readonly least: 1 | 2;
}

const sampleSize = 20;

/**
 * Finds the delimiter and decimal sign under which the first rows hold the largest share of numbers;
 * between equals the longer run of rows, then the surer delimiter and the point. Undefined where no
 * line has the values that a row needs.
 */
export function findDialect(
  lines: readonly string[],
  options: DelimitedOptions,
  least: 1 | 2,
): Dialect | undefined {
  let best: Dialect | undefined;
  let bestShare = 0;
  let bestRows = 0;
  for (const { delimiter, decimal } of candidates(options)) {
    const firstRow = findFirstRow(lines, delimiter, decimal, least);
    if (firstRow === undefined) continue;
    const sample = lines.slice(firstRow, firstRow + sampleSize);
    const { share, rows } = judge(sample, delimiter, decimal, least);
    if (share > bestShare || (share === bestShare && rows > bestRows)) {
      best = { delimiter, decimal, firstRow, least };
      bestShare = share;
      bestRows = rows;
    }
  }
  return best;
}

/** Every pair of signs that the options leave open. */
export function candidates(
  options: DelimitedOptions,
): readonly { delimiter: Delimiter; decimal: DecimalSign }[] {
  return delimiters
    .filter((delimiter) => delimiter === (options.delimiter ?? delimiter))
    .flatMap((delimiter) => decimalSigns.map((decimal) => ({ delimiter, decimal })))
    .filter(({ decimal }) => decimal === (options.decimal ?? decimal));
}

/**
 * The first row of numbers that another row follows, moved up over damaged rows right above it, so
 * that a bad first row is reported and not taken for a heading.
 */
function findFirstRow(
  lines: readonly string[],
  delimiter: Delimiter,
  decimal: DecimalSign,
  least: number,
): number | undefined {
  const cellsAt = (index: number) => splitLine(lines[index] ?? '', delimiter);
  for (let index = 0; index < lines.length; index++) {
    if (least > 1 && !lines[index]?.includes(delimiter)) continue;
    const row = cellsAt(index);
    if (lineKind(row, decimal, least) !== 'row') continue;
    const next = lines.findIndex((line, later) => later > index && line.trim() !== '');
    if (next >= 0 && !follows(cellsAt(next), row, decimal, least)) continue;
    let first = index;
    while (first > 0 && isRow(cellsAt(first - 1), row, decimal, least)) first -= 1;
    return first;
  }
  return undefined;
}

/** Whether a line may be a row below another, whole or damaged. */
function follows(
  cells: readonly string[],
  row: readonly string[],
  decimal: DecimalSign,
  least: number,
): boolean {
  if (isRow(cells, row, decimal, least)) return true;
  const shares = (cell: string, at: number) =>
    isValue(cell, decimal) && isValue(row[at] ?? '', decimal);
  return cells.length === row.length && cells.some(shares);
}

/** Whether a line is a row like another one, but for readings that are missing. */
function isRow(
  cells: readonly string[],
  row: readonly string[],
  decimal: DecimalSign,
  least: number,
): boolean {
  const kind = lineKind(cells, decimal, least);
  if (kind !== 'text') return kind !== 'blank';
  const isLike = (cell: string, at: number) =>
    isValue(cell, decimal) || isNoReading(cell) || !isValue(row[at] ?? '', decimal);
  const hasNumber = cells.some((cell) => isValue(cell, decimal));
  return (hasNumber || least === 1) && cells.length === row.length && cells.every(isLike);
}

/** The share of numbers among the fields of the rows, and how many rows there are. */
function judge(
  lines: readonly string[],
  delimiter: Delimiter,
  decimal: DecimalSign,
  least: number,
) {
  const rows = lines
    .map((line) => splitLine(line, delimiter))
    .filter((cells) => lineKind(cells, decimal, least) === 'row');
  const cells = rows.flat().filter((cell) => cell !== '');
  const numbers = cells.filter((cell) => isValue(cell, decimal));
  return { share: numbers.length / cells.length, rows: rows.length };
}
