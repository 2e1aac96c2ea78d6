import type { Check } from '@truesweep/core';
import { checkRows, limitSources } from '@truesweep/wording';
import { paragraph, type TextPart, table } from './textPart.js';

/** The checks as a table: what was measured, its limit, the margin, how it came out; then where the limits are from. */
export function printChecks(checks: readonly Check[]): readonly TextPart[] {
  const [head = [], ...rows] = checkRows(checks);
  return [
    table(head, rows, ['left', 'right', 'right', 'right', 'left']),
    paragraph(limitSources(checks), '  '),
  ];
}
