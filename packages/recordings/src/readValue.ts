import { clockTime } from './clockTime.js';
import { type ColumnRole, unitPowers } from './delimitedOptions.js';
import type { RowLayout } from './rowLayout.js';
import { type FieldBounds, fieldText } from './scanFields.js';
import { scanNumber } from './scanNumber.js';

/** The value that a field of a row holds, s or V, or as written; NaN where it holds none. A time on a clock counts from midnight. */
export function readValue(
  bytes: Uint8Array,
  bounds: FieldBounds,
  { columns, decimal }: RowLayout,
  role: ColumnRole,
): number {
  const column = columns[role];
  if (!column || column.index >= bounds.count) return Number.NaN;
  const unit = 'unit' in column ? column.unit : 'V';
  const { index } = column;
  if (unit === 'clock') {
    return (clockTime(fieldText(bytes, bounds, index))?.nanoseconds ?? Number.NaN) / 1e9;
  }
  const [from, to] = [bounds.starts[index]!, bounds.ends[index]!];
  return scanNumber(bytes, from, to, decimal.charCodeAt(0), unitPowers[unit]);
}
