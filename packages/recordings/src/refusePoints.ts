import { InputError } from '@truesweep/core';
import type { ReadColumns } from './chooseColumns.js';
import type { DelimitedOptions } from './delimitedOptions.js';
import type { Dialect } from './findDialect.js';
import { splitLine } from './splitLine.js';

/** How many lines from the first row on are looked at. */
const sampleSize = 500;

/** A number as it is written with a point between thousands, which no leading zero precedes. */
const inThousands = /^[+-]?[1-9]\d{0,2}(\.\d{3})+$/;

/** More than this no signal is, in its own unit; where points that part thousands would make it more, they are decimal signs. */
const mostOfSignal: Readonly<Record<'mV' | 'counts' | '%', number>> = {
  mV: 100_000,
  counts: 65_536,
  '%': 100,
};

/**
 * Refuses a column of millivolts, counts, milliseconds or microseconds in which every point may part thousands: read as decimal signs they
 * would make a sensor of 1.2 V one of 1.2 mV. Volts and seconds have three decimals too often to ask.
 *
 * @throws InputError `ambiguous-point`, with both readings.
 */
export function refusePoints(
  lines: readonly string[],
  { delimiter, decimal, firstRow }: Dialect,
  { time, signal }: ReadColumns,
  options: DelimitedOptions,
  path: string,
): void {
  if (decimal !== '.' || options.decimal !== undefined) return;
  const rows = lines
    .slice(firstRow, firstRow + sampleSize)
    .map((line) => splitLine(line, delimiter));
  for (const [name, column] of [
    ['signal', signal],
    ['time', time],
  ] as const) {
    if (!column || column.unit === 'V' || column.unit === 's' || column.unit === 'clock') continue;
    const cells = rows.map((row) => row[column.index] ?? '');
    const withPoint = cells.filter((cell) => cell.includes('.'));
    if (withPoint.length === 0 || !withPoint.every((cell) => inThousands.test(cell))) continue;
    const most =
      name === 'signal' ? mostOfSignal[signal.unit as keyof typeof mostOfSignal] : Infinity;
    if (withPoint.some((cell) => Math.abs(Number(cell.replaceAll('.', ''))) > most)) continue;
    // Times that are all written to a thousandth have a decimal sign; where only the longer ones have a point it parts thousands.
    if (name === 'time' && withPoint.length === cells.filter(Boolean).length) continue;
    const [cell] = withPoint as [string];
    const line = rows.findIndex((row) => row[column.index] === cell);
    throw new InputError(
      'ambiguous-point',
      path,
      `The point in the ${name} “${cell}” can be a decimal sign (${Number.parseFloat(cell)} ${column.unit}) or part thousands (${cell.replaceAll('.', '')} ${column.unit}). Say that it is a decimal sign by the option decimal, or export without points between thousands.`,
      { line: firstRow + line + 1, column: lines[firstRow + line]!.indexOf(cell) + 1 },
    );
  }
}
