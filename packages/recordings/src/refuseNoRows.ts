import { InputError } from '@truesweep/core';
import type { DelimitedOptions } from './delimitedOptions.js';
import { candidates } from './findDialect.js';
import { isValue as isValueOf } from './isValue.js';
import { isNoReading } from './lineKind.js';
import { splitLine } from './splitLine.js';

/** Refuses a text in which no line has two numbers: only broken rows, one column, or no number at all. */
export function refuseNoRows(
  lines: readonly string[],
  options: DelimitedOptions,
  path: string,
): never {
  refuseDates(lines, options, path);
  for (const [index, line] of lines.entries()) {
    for (const { delimiter, decimal } of candidates(options)) {
      const cells = splitLine(line, delimiter);
      const isValue = (cell: string) => isValueOf(cell, decimal);
      const isRow =
        cells.some(isValue) && cells.every((cell) => isValue(cell) || isNoReading(cell));
      if (!isRow) continue;
      const broken = cells.find((cell) => !isValue(cell));
      if (cells.length > 1 && broken !== undefined) refuseBroken(broken, index, line, path);
      if (cells.length === 1) refuseOneColumn(index, path);
    }
  }
  throw new InputError(
    'no-numbers',
    path,
    'The file holds no rows of numbers; it must hold rows of time and voltage.',
    { line: 1, column: 1 },
  );
}

/** A date by its day, month and year in whatever order, and a time of half a day. */
const unclearDate = /^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b/;
const halfDay = /\b\d{1,2}:\d\d(:\d\d)?([.,]\d+)?\s*[ap]\.?\s?m\b/i;

/** Refuses dates and times that are written so that one can't be sure of them, beside a number. */
function refuseDates(lines: readonly string[], options: DelimitedOptions, path: string): void {
  for (const [index, line] of lines.entries()) {
    for (const { delimiter, decimal } of candidates(options)) {
      const cells = splitLine(line, delimiter);
      const date = cells.find((cell) => unclearDate.test(cell) || halfDay.test(cell));
      if (date === undefined || !cells.some((cell) => isValueOf(cell, decimal))) continue;
      const wrong = halfDay.test(date)
        ? 'is a time of half a day'
        : 'is a date whose day and month can be taken for each other';
      throw new InputError(
        'unclear-date',
        path,
        `“${date}” on line ${index + 1} ${wrong}; export times as seconds, as 14:05:09.25, or as 2026-11-29 14:05:09.25.`,
        { line: index + 1, column: line.indexOf(date) + 1 },
      );
    }
  }
}

function refuseBroken(cell: string, index: number, line: string, path: string): never {
  const wrong = cell === '' ? 'lacks a value' : `has “${cell}”, which is no reading,`;
  throw new InputError(
    cell === '' ? 'missing-field' : 'not-a-number',
    path,
    `Line ${index + 1} ${wrong} and no row has two numbers; every row needs a time and a voltage.`,
    { line: index + 1, column: (cell === '' ? line.length : line.indexOf(cell)) + 1 },
  );
}

function refuseOneColumn(index: number, path: string): never {
  throw new InputError(
    'one-column',
    path,
    'The file holds one column of numbers; it must hold a column of times and one of voltages, or its sample rate must be told by the option sampleRate.',
    { line: index + 1, column: 1 },
  );
}
