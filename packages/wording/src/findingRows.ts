import { checkScore, type Finding, type QuantityUnit } from '@truesweep/core';
import { duringLabels, findingLabels } from './findings.js';
import { formatAlike } from './formatAlike.js';
import { say } from './say.js';
import { scoreLabels } from './scoreLabels.js';

/**
 * Findings as rows of a table, its head first; each column in one unit.
 *
 * @example
 * const finding = { kind: 'dropout', start: 0.75, end: 0.766, travel: 0.057, depth: -0.585, depthOfSpan: 0.18, depthOfSource: 0.117, went: 'to-rest-level', during: 'opening' } as const;
 * findingRows([finding])[1].join('; ') // => 'dropout; 750.00 ms; 16 ms; 5.7 %; −585 mV; 18 %; opening'
 */
export function findingRows(findings: readonly Finding[]): readonly (readonly string[])[] {
  checkScore({ findings }, 'score', ['findings']);
  const someFar = findings.some(({ travel }) => travel >= 0.0995);
  const column = (
    value: (finding: Finding) => number,
    unit: QuantityUnit,
    digits: number,
  ): readonly string[] => {
    const { numbers, unit: shown } = formatAlike(findings.map(value), unit, digits);
    return numbers.map((number) => say`${number} ${shown}`);
  };
  const columns = [
    [scoreLabels.findings, ...findings.map(({ kind }) => findingLabels[kind])],
    [scoreLabels.at, ...column(({ start }) => start, 's', 5)],
    [scoreLabels.lasts, ...column(({ start, end }) => end - start, 's', 2)],
    [
      scoreLabels.travel,
      ...column(({ travel }) => travel, '%', someFar ? 3 : 2).map((text, i) =>
        findings[i]?.unplaced ? scoreLabels.unplaced : text,
      ),
    ],
    [scoreLabels.depth, ...column(({ depth }) => depth, 'V', 3)],
    [scoreLabels.ofSpan, ...column(({ depthOfSpan }) => depthOfSpan, '%', 2)],
    [scoreLabels.during, ...findings.map(({ during }) => duringLabels[during])],
  ];
  return Array.from({ length: findings.length + 1 }, (_, i) =>
    columns.map((cells) => cells[i] ?? ''),
  );
}
