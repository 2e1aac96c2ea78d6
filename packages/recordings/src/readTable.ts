import { InputError } from '@truesweep/core';
import { clockTime } from './clockTime.js';
import type { DelimitedOptions } from './delimitedOptions.js';
import type { Dialect } from './findDialect.js';
import { firstWholeRows } from './firstWholeRows.js';
import { headingRole } from './headingRole.js';
import { isNumber } from './isNumber.js';
import { lineKind } from './lineKind.js';
import { preambleRate } from './preambleRate.js';
import { type Heading, joinHeadings, readHeading } from './readHeading.js';
import { splitLine } from './splitLine.js';

/** The shape of the table of numbers: its columns and what their headings say. */
export interface Table {
  /** How many fields every row has. */
  readonly fields: number;
  /** Indexes of the columns that hold numbers, of those among them whose numbers rise, and of those that hold times on a clock. */
  readonly numeric: readonly number[];
  readonly rising: readonly number[];
  readonly clock: readonly number[];
  /** Empty where the file has no headings. */
  readonly headings: readonly Heading[];
  /** Index of the line of the headings, or of the first row where there are none; and its text. */
  readonly headingLine: number;
  readonly headingText: string;
  /** The lines from the headings to the first row, which stand again where files were joined. */
  readonly headingLines: readonly string[];
}

interface Rows {
  readonly cells: readonly (readonly string[])[];
  /** Fields of the first row without and with empty ones at its end. */
  readonly used: number;
  readonly all: number;
}

/** How many rows are looked at. */
const sampleSize = 500;

/** Reads the shape of the table from the head of the file; refuses one with two readings. */
export function readTable(
  lines: readonly string[],
  dialect: Dialect,
  options: DelimitedOptions,
  path: string,
): Table {
  const rows = readRows(lines, dialect);
  const found = findHeadings(lines, dialect, rows);
  const headings = found?.headings ?? [];
  const ambiguous = isAmbiguous(rows, dialect, headings.length > 0, options);
  if (ambiguous) refuseComma(lines, dialect, rows, path);
  if (!found) checkMismatch(lines, dialect, rows, path);
  const headingLine = found?.line ?? dialect.firstRow;
  const all = Array.from({ length: rows.used }, (_, index) => index);
  const numeric = all.filter((index) =>
    mostAre(rows, index, (cell) => isNumber(cell, dialect.decimal)),
  );
  return {
    fields: headings.length || rows.used,
    numeric,
    rising: numeric.filter((index) => rises(rows, index, dialect)),
    clock: all.filter((index) => mostAre(rows, index, (cell) => clockTime(cell) !== undefined)),
    headings,
    headingLine,
    headingText: found ? (lines[found.line] ?? '') : '',
    headingLines: lines.slice(headingLine, dialect.firstRow).filter((line) => line.trim() !== ''),
  };
}

function readRows(
  lines: readonly string[],
  { delimiter, decimal, firstRow, least }: Dialect,
): Rows {
  const cells = firstWholeRows(lines, firstRow, delimiter, decimal, least, sampleSize);
  const first = cells[0] ?? [];
  return { cells, used: usedFields(first).length, all: first.length };
}

function usedFields(cells: readonly string[]): readonly string[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== '') + 1);
}

function mostAre({ cells }: Rows, index: number, is: (cell: string) => boolean): boolean {
  return 2 * cells.filter((row) => is(row[index] ?? '')).length > cells.length;
}

function rises({ cells }: Rows, index: number, { decimal }: Dialect): boolean {
  const values = cells.map((row) => Number((row[index] ?? '').replace(decimal, '.')));
  return values.every((value, at) => at === 0 || value >= values[at - 1]!);
}

/** The headings right above the first row, in one line or with a line of units below the names. */
function findHeadings(
  lines: readonly string[],
  dialect: Dialect,
  rows: Rows,
): { headings: readonly Heading[]; line: number } | undefined {
  const line = lineAbove(lines, dialect.firstRow);
  const cells = headingCells(lines, line, dialect);
  if (!fits(cells, rows)) return undefined;
  if (cells.length === 1 && preambleRate(lines.slice(line, line + 1)) !== undefined)
    return undefined;
  const namesLine = lineAbove(lines, line);
  const names = headingCells(lines, namesLine, dialect);
  const joined = fits(names, rows) ? joinHeadings(names, cells) : undefined;
  if (joined) return { headings: joined, line: namesLine };
  return { headings: cells.map(readHeading), line };
}

function fits(cells: readonly string[], { used, all }: Rows): boolean {
  return cells.length >= used && cells.length <= all;
}

/** Index of the nearest line above that is not blank, or −1. */
function lineAbove(lines: readonly string[], index: number): number {
  return lines.slice(0, Math.max(index, 0)).findLastIndex((line) => line.trim() !== '');
}

/** The cells of a line of text; between spaces a unit in brackets belongs to the name before it. */
function headingCells(lines: readonly string[], line: number, dialect: Dialect): readonly string[] {
  const text = dialect.delimiter === ' ' ? joinBrackets(lines[line] ?? '') : (lines[line] ?? '');
  const cells = splitLine(text, dialect.delimiter);
  return lineKind(cells, dialect.decimal, dialect.least) === 'text' ? usedFields(cells) : [];
}

function joinBrackets(line: string): string {
  return line.replace(/^\s*[#%]\s+/, '').replace(/ +(?=[([])/g, '');
}

/** Whether a comma can be the decimal sign as well as what parts fields or thousands. */
function isAmbiguous(
  { cells }: Rows,
  { delimiter, decimal }: Dialect,
  hasHeadings: boolean,
  options: DelimitedOptions,
): boolean {
  const all = cells.flat();
  const isUnsure = options.decimal === ',' || (options.decimal === undefined && !hasHeadings);
  if (delimiter === ',' && options.delimiter === undefined && isUnsure) {
    if (all.every((cell) => /^[+-]?\d*$/.test(cell))) return true;
  }
  if (decimal !== ',' || options.decimal !== undefined) return false;
  const isLone = options.delimiter === undefined && cells.every((row) => row.length === 1);
  if (isLone && all.every((cell) => /^[+-]?\d+,\d+$/.test(cell))) return true;
  const withComma = all.filter((cell) => cell.includes(','));
  return withComma.length > 0 && withComma.every((cell) => /^[+-]?[1-9]\d{0,2},\d{3}$/.test(cell));
}

/** Refuses commas with two readings, and shows both. */
function refuseComma(
  lines: readonly string[],
  { delimiter, firstRow }: Dialect,
  { cells }: Rows,
  path: string,
): never {
  const line = lines[firstRow] ?? '';
  const column = Math.max(line.indexOf(','), 0) + 1;
  const lone = cells.flat().find((cell) => cell.includes(','));
  throw new InputError(
    'ambiguous-comma',
    path,
    lone !== undefined && delimiter !== ',' && cells.some((row) => row.length > 1)
      ? `The comma in “${lone}” can be a decimal sign (${lone.replace(',', '.')}) or part thousands (${lone.replace(',', '')}). Say that it is a decimal sign by the option decimal, or export without commas between thousands.`
      : `The commas in “${line.trim()}” can be decimal signs (${shownFields(decimalFields(line))}) or part fields (${shownFields(line.split(','))}). Say which by the options decimal and delimiter, or export with a decimal point.`,
    { line: firstRow + 1, column },
  );
}

/** The numbers of a line whose commas are decimal signs where they can be: every second one between fields that commas part too. */
function decimalFields(line: string): readonly string[] {
  const parts = line.split(',');
  return Array.from({ length: Math.ceil(parts.length / 2) }, (_, at) =>
    parts.slice(2 * at, 2 * at + 2).join('.'),
  );
}

function shownFields(fields: readonly string[]): string {
  const shown = fields.map((field) => field.trim());
  return shown.length === 1 ? `one number, ${shown[0]}` : `the fields ${shown.join(' and ')}`;
}

/** Refuses headings of time and voltage whose number is not that of the fields below. */
function checkMismatch(lines: readonly string[], dialect: Dialect, rows: Rows, path: string): void {
  const line = lineAbove(lines, dialect.firstRow);
  const cells = headingCells(lines, line, dialect);
  const roles = cells.map((cell) => headingRole(readHeading(cell)));
  if (!roles.includes('time') || !roles.some((role) => role === 'signal' || role === 'voltage')) {
    return;
  }
  throw new InputError(
    'heading-mismatch',
    path,
    `There are ${cells.length} headings over rows of ${rows.used} fields; there must be one heading for each field.`,
    { line: line + 1, column: 1 },
  );
}
