import type { Finding, QuantityUnit } from '@truesweep/core';
import {
  duringLabels,
  findingLabels,
  findingMeanings,
  formatAlike,
  moreFindingsSentence,
  scoreLabels,
} from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import { wrapText } from './wrapText.js';

const mostListed = 12;

/** The findings as a table, the first of them where there are many; then what each kind is. */
export function printFindings(findings: readonly Finding[]): readonly string[] {
  const listed = findings.slice(0, mostListed);
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const someFar = listed.some(({ travel }) => travel >= 0.0995);
  const column = (
    value: (finding: Finding) => number,
    unit: QuantityUnit,
    digits: number,
  ): readonly string[] => {
    const { numbers, unit: shown } = formatAlike(listed.map(value), unit, digits);
    return numbers.map((number) => `${number} ${shown}`);
  };
  const columns = [
    [scoreLabels.findings, ...listed.map(({ kind }) => findingLabels[kind])],
    [scoreLabels.at, ...column(({ start }) => start, 's', 5)],
    [scoreLabels.lasts, ...column(({ start, end }) => end - start, 's', 2)],
    [scoreLabels.travel, ...column(({ travel }) => travel, '%', someFar ? 3 : 2)],
    [scoreLabels.depth, ...column(({ depth }) => depth, 'V', 3)],
    [scoreLabels.ofSpan, ...column(({ depthOfSpan }) => depthOfSpan, '%', 2)],
    [scoreLabels.during, ...listed.map(({ during }) => duringLabels[during])],
  ];
  const rows = Array.from({ length: listed.length + 1 }, (_, i) =>
    columns.map((cells) => cells[i] ?? ''),
  );
  const more = findings.length - listed.length;
  return [
    ...alignColumns(rows, ['left', 'right', 'right', 'right', 'right', 'right', 'left']).map(
      (line) => `  ${line}`,
    ),
    ...(more > 0 ? [`  ${moreFindingsSentence(more)}`] : []),
    ...kinds.flatMap((kind) => wrapText(`${findingLabels[kind]}: ${findingMeanings[kind]}`, '  ')),
  ];
}
