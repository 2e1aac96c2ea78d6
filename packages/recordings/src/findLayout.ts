import { chooseColumns } from './chooseColumns.js';
import type { DelimitedOptions } from './delimitedOptions.js';
import { type Dialect, findDialect } from './findDialect.js';
import { preambleRate } from './preambleRate.js';
import { readTable } from './readTable.js';
import { refusePoints } from './refusePoints.js';
import type { RowLayout } from './rowLayout.js';
import type { TakenFrom } from './takenFrom.js';

/** Samples per second, and who told them. */
export interface ToldRate {
  /** Samples per second, Hz, above 0. */
  readonly hertz: number;
  /** Who told it. */
  readonly from: Extract<TakenFrom, 'option' | 'preamble'>;
}

/** How the first lines of a table are written, and the rate of its samples where no times are read. */
export interface FoundDialect extends Dialect {
  readonly rate?: ToldRate;
}

/** A preamble is no longer than this, lines. */
const longestPreamble = 100;

/** Finds how a table is written, going by its first lines; undefined where none is a row. */
export function dialectOf(
  lines: readonly string[],
  options: DelimitedOptions,
): FoundDialect | undefined {
  const rate = sampleRateOf(lines, options);
  const dialect =
    (rate?.from === 'option' ? undefined : findDialect(lines, options, 2)) ??
    (rate && findDialect(lines, options, 1));
  return dialect && { ...dialect, ...(rate && { rate }) };
}

/**
 * Finds the columns of a table.
 *
 * @throws InputError where they can't be told, or have no unit or no scale.
 */
export function layoutOf(
  lines: readonly string[],
  { rate, ...dialect }: FoundDialect,
  options: DelimitedOptions,
  path: string,
): RowLayout {
  const table = readTable(lines, dialect, options, path);
  const columns = chooseColumns(table, options, rate?.from, path);
  refusePoints(lines, dialect, columns, options, path);
  const { fields, headingLines } = table;
  return {
    ...dialect,
    fields,
    headingLines,
    columns,
    ...(!columns.time && rate && { sampleRate: rate.hertz }),
  };
}

/** The sample rate that the options tell, or else the lines before the table. */
function sampleRateOf(
  lines: readonly string[],
  { sampleRate }: DelimitedOptions,
): ToldRate | undefined {
  if (sampleRate !== undefined) return { hertz: sampleRate, from: 'option' };
  const hertz = preambleRate(lines.slice(0, longestPreamble));
  return hertz === undefined ? undefined : { hertz, from: 'preamble' };
}
