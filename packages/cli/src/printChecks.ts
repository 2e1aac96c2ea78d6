import type { Check } from '@truesweep/core';
import { checkRows, limitSources } from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import { wrapText } from './wrapText.js';

/** The checks as a table: what was measured, its limit, the margin, how it came out; then where the limits are from. */
export function printChecks(checks: readonly Check[]): readonly string[] {
  return [
    ...alignColumns(checkRows(checks), ['left', 'right', 'right', 'right', 'left']).map(
      (line) => `  ${line}`,
    ),
    ...wrapText(limitSources(checks), '  '),
  ];
}
