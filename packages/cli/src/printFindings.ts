import type { Finding } from '@truesweep/core';
import {
  findingLabels,
  findingMeanings,
  findingRows,
  moreFindingsSentence,
} from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import { wrapText } from './wrapText.js';

const mostListed = 12;

/** The findings as a table, the first of them where there are many; then what each kind is. */
export function printFindings(findings: readonly Finding[]): readonly string[] {
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const rows = findingRows(findings.slice(0, mostListed));
  const more = findings.length - mostListed;
  return [
    ...alignColumns(rows, ['left', 'right', 'right', 'right', 'right', 'right', 'left']).map(
      (line) => `  ${line}`,
    ),
    ...(more > 0 ? [`  ${moreFindingsSentence(more)}`] : []),
    ...kinds.flatMap((kind) => wrapText(`${findingLabels[kind]}: ${findingMeanings[kind]}`, '  ')),
  ];
}
