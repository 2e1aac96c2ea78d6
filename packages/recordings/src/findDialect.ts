import {
  type DecimalSign,
  type DelimitedOptions,
  type Delimiter,
  decimalSigns,
  delimiters,
} from './delimitedOptions.js';
import { firstWholeRows } from './firstWholeRows.js';
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
/** Under other signs rows may begin so many lines later than under those under which they begin first. */
const laterRows = 100;

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
  const open = candidates(options);
  const firsts = firstRows(lines, open, least);
  for (const [i, { delimiter, decimal }] of open.entries()) {
    const firstRow = firsts[i];
    if (firstRow === undefined) continue;
    const sample = firstWholeRows(lines, firstRow, delimiter, decimal, least, sampleSize);
    const { share, rows } = judge(sample, decimal);
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

/** The first row of numbers under each pair of signs, sought line by line under all of them. */
function firstRows(
  lines: readonly string[],
  open: ReturnType<typeof candidates>,
  least: number,
): readonly (number | undefined)[] {
  const found: (number | undefined)[] = open.map(() => undefined);
  let last = lines.length - 1;
  for (let index = 0; index <= last; index++)
    for (const [i, { delimiter, decimal }] of open.entries()) {
      if (found[i] !== undefined) continue;
      found[i] = firstRowAt(lines, index, delimiter, decimal, least);
      if (found[i] !== undefined) last = Math.min(last, index + laterRows);
    }
  return found;
}

/**
 * The first row of numbers, where a line is one that another row follows: moved up over damaged rows right above it, so
 * that a bad first row is reported and not taken for a heading.
 */
function firstRowAt(
  lines: readonly string[],
  index: number,
  delimiter: Delimiter,
  decimal: DecimalSign,
  least: number,
): number | undefined {
  if (least > 1 && !lines[index]!.includes(delimiter)) return undefined;
  const cellsAt = (at: number) => splitLine(lines[at] ?? '', delimiter);
  const row = cellsAt(index);
  if (lineKind(row, decimal, least) !== 'row') return undefined;
  let next = index + 1;
  while (next < lines.length && lines[next]!.trim() === '') next++;
  if (next < lines.length && !follows(cellsAt(next), row, decimal, least)) return undefined;
  let first = index;
  while (first > 0 && isRow(cellsAt(first - 1), row, decimal, least)) first -= 1;
  return first;
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

/** The share of numbers among the fields of rows, and how many rows there are. */
function judge(rows: readonly (readonly string[])[], decimal: DecimalSign) {
  const cells = rows.flat().filter((cell) => cell !== '');
  const numbers = cells.filter((cell) => isValue(cell, decimal));
  return { share: numbers.length / cells.length, rows: rows.length };
}
