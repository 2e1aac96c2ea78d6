import type { Finding } from '@truesweep/core';
import {
  findingLabels,
  findingMeanings,
  findingRows,
  moreFindingsSentence,
} from '@truesweep/wording';
import { paragraph, type TextPart, table } from './textPart.js';

const mostListed = 12;

/** The findings as a table, the first of them where there are many; then what each kind is. */
export function printFindings(findings: readonly Finding[]): readonly TextPart[] {
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const [head = [], ...rows] = findingRows(findings.slice(0, mostListed));
  const more = findings.length - mostListed;
  return [
    table(head, rows, ['left', 'right', 'right', 'right', 'right', 'right', 'left']),
    ...(more > 0 ? [`  ${moreFindingsSentence(more)}`] : []),
    ...kinds.map((kind) => paragraph(`${findingLabels[kind]}: ${findingMeanings[kind]}`, '  ')),
  ];
}
