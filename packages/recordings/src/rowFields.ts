import type { NoReading } from '@truesweep/core';
import { columnRoles } from './columnRoles.js';
import type { ColumnRole } from './delimitedOptions.js';
import { isNoReading, noReadingOf } from './lineKind.js';
import { readValue } from './readValue.js';
import type { RowLayout } from './rowLayout.js';
import { type FieldBounds, fieldText } from './scanFields.js';

/** The roles that columns are read for, in the order of their values in a row: the time first, read or counted. */
export function rolesOf({ columns }: Pick<RowLayout, 'columns'>): readonly ColumnRole[] {
  return columnRoles.filter((role) => role === 'time' || columns[role] !== undefined);
}

/** Room for the fields of a line. */
export function fieldBounds(fields: number): FieldBounds {
  const size = fields + 1;
  return {
    starts: new Float64Array(size),
    ends: new Float64Array(size),
    count: 0,
    used: 0,
    end: 0,
    next: 0,
  };
}

/** Reads the values of a line into their places, NaN for a reading that is not there; whether the line is a whole row. */
export function readRow(
  bytes: Uint8Array,
  bounds: FieldBounds,
  layout: RowLayout,
  roles: readonly ColumnRole[],
  values: Float64Array,
): boolean {
  let isWhole = bounds.count >= layout.fields && bounds.used <= layout.fields;
  for (const [place, role] of roles.entries()) {
    const column = layout.columns[role];
    if (!column) continue;
    values[place] = readValue(bytes, bounds, layout, role);
    isWhole &&=
      Number.isFinite(values[place]) ||
      (place > 0 &&
        column.index < bounds.count &&
        isNoReading(fieldText(bytes, bounds, column.index)));
  }
  return isWhole;
}

/** What a row says instead of its signal's reading; where another column lacks one nothing is known. */
export function noReadingIn(
  bytes: Uint8Array,
  bounds: FieldBounds,
  layout: RowLayout,
  values: Float64Array,
  roles: readonly ColumnRole[],
): NoReading {
  const isSignals = roles.every(
    (role, place) => role === 'signal' || Number.isFinite(values[place]),
  );
  const { index } = layout.columns.signal;
  return isSignals ? noReadingOf(fieldText(bytes, bounds, index)) : 'none';
}

/** Volts of one unit of a column, 1 where it is read in V or as written. */
export function scaleOf({ columns }: Pick<RowLayout, 'columns'>, role: ColumnRole): number {
  const column = columns[role];
  return (column && 'voltsPerUnit' in column && column.voltsPerUnit) || 1;
}

const decoder = new TextDecoder();

/** Whether a line is one of the headings, standing again. */
export function isHeading(
  bytes: Uint8Array,
  start: number,
  end: number,
  { headingLines }: RowLayout,
): boolean {
  const text = decoder.decode(bytes.subarray(start, end)).trim();
  return headingLines.some((heading) => heading.trim() === text);
}
