import { filingLabels } from '@truesweep/wording';
import type { FilingRecord } from './report.js';

/** What a report is filed by, as rows of label and value; what was not said is left out. */
export function filingRows(
  record: FilingRecord | undefined,
): readonly (readonly [string, string])[] {
  const names = Object.keys(filingLabels) as readonly (keyof FilingRecord)[];
  return names.flatMap((name) => {
    const value = record?.[name]?.trim();
    return value ? [[filingLabels[name], value] as const] : [];
  });
}
