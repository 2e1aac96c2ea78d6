import {
  type DecimalSign,
  type DelimitedOptions,
  type Delimiter,
  decimalSigns,
  delimiters,
} from './delimitedOptions.js';
import { isNumber } from './isNumber.js';
import { isNoReading, lineKind } from './lineKind.js';
import { splitLine } from './splitLine.js';

/** How the rows of a file are written, and where they begin. */
export interface Dialect {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalSign;
  /** Index of the first line that is a row of numbers. */
  readonly firstRow: number;
}

const sampleSize = 20;

/**
 * Finds the delimiter and decimal sign under which the first rows hold the largest share of numbers;
 * between equals the longer run of rows, then the surer delimiter and the point. Undefined where no
 * line has two numbers.
 */
export function findDialect(
  lines: readonly string[],
  options: DelimitedOptions,
): Dialect | undefined {
  let best: Dialect | undefined;
  let bestShare = 0;
  let bestRows = 0;
  for (const { delimiter, decimal } of candidates(options)) {
    const firstRow = findFirstRow(lines, delimiter, decimal);
    if (firstRow === undefined) continue;
    const { share, rows } = judge(lines.slice(firstRow, firstRow + sampleSize), delimiter, decimal);
    if (share > bestShare || (share === bestShare && rows > bestRows)) {
      best = { delimiter, decimal, firstRow };
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
): number | undefined {
  const cellsAt = (index: number) => splitLine(lines[index] ?? '', delimiter);
  for (let index = 0; index < lines.length; index++) {
    if (!lines[index]?.includes(delimiter)) continue;
    const row = cellsAt(index);
    if (lineKind(row, decimal) !== 'row') continue;
    const next = lines.findIndex((line, later) => later > index && line.trim() !== '');
    if (next >= 0 && !follows(cellsAt(next), row, decimal)) continue;
    let first = index;
    while (first > 0 && isRow(cellsAt(first - 1), row, decimal)) first -= 1;
    return first;
  }
  return undefined;
}

/** Whether a line may be a row below another, whole or damaged. */
function follows(cells: readonly string[], row: readonly string[], decimal: DecimalSign): boolean {
  if (isRow(cells, row, decimal)) return true;
  const shares = (cell: string, at: number) =>
    isNumber(cell, decimal) && isNumber(row[at] ?? '', decimal);
  return cells.length === row.length && cells.some(shares);
}

/** Whether a line is a row like another one, but for readings that are missing. */
function isRow(cells: readonly string[], row: readonly string[], decimal: DecimalSign): boolean {
  const kind = lineKind(cells, decimal);
  if (kind !== 'text') return kind !== 'blank';
  const isLike = (cell: string, at: number) =>
    isNumber(cell, decimal) || isNoReading(cell) || !isNumber(row[at] ?? '', decimal);
  const hasNumber = cells.some((cell) => isNumber(cell, decimal));
  return hasNumber && cells.length === row.length && cells.every(isLike);
}

/** The share of numbers among the fields of the rows, and how many rows there are. */
function judge(lines: readonly string[], delimiter: Delimiter, decimal: DecimalSign) {
  const rows = lines
    .map((line) => splitLine(line, delimiter))
    .filter((cells) => lineKind(cells, decimal) === 'row');
  const cells = rows.flat().filter((cell) => cell !== '');
  const numbers = cells.filter((cell) => isNumber(cell, decimal));
  return { share: numbers.length / cells.length, rows: rows.length };
}
