import type { ColumnRole } from './delimitedOptions.js';

/** What the columns of a recording are read for, in the order of their values in a row. */
export const columnRoles: readonly ColumnRole[] = [
  'time',
  'signal',
  'supply',
  'second',
  'position',
];
