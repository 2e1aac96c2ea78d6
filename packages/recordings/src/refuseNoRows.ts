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
