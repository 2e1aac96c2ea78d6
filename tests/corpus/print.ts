import { clopperPearson } from './clopperPearson.js';
import { type CaseSet, type Floor, floors, reaches } from './floors.js';
import { kinds, type Measured, type Rate, type Table, verdicts } from './measure.js';

/** All figures of a measurement as text. */
export function print(title: CaseSet, measured: Measured): string {
  const { undecided, undecidedBy } = measured;
  return [
    `${title}: ${measured.cases} cases`,
    ...floors(measured, title).map(floorLine),
    '',
    rateLine('poor recording passed', measured.inadequatePassed),
    rateLine('found during a snap', measured.recallInSnaps),
    rateLine('found in poor recordings', measured.recallInadequate),
    rateLine('events reported in pieces', measured.inPieces),
    `${'false findings per case'.padEnd(44)}${(measured.falseFindings.hits / Math.max(1, measured.falseFindings.of)).toFixed(3)}`,
    rateLine('verdict one of those that the rules allow', measured.verdictAllowed),
    rateLine('verdict left open by the rules', undecided),
    ...Object.entries(undecidedBy)
      .sort((a, b) => b[1] - a[1])
      .map(([why, times]) => `  ${why.padEnd(38)}${times}`),
    '',
    'reported, of any kind, by visibility ratio',
    ...measured.detection.map(({ from, to, rate }) => rateLine(`  ${from} to ${to}`, rate)),
    '',
    ...tableLines('verdict: truth down, judged across', measured.verdictTable, verdicts),
    '',
    ...tableLines('cause: truth down, judged across', measured.causeTable),
    '',
    ...tableLines('kind: truth down, reported across', measured.kindTable, [...kinds, 'missed']),
    '',
    'verdict right by class',
    ...Object.entries(measured.verdictByClass).map(([name, rate]) => rateLine(`  ${name}`, rate)),
    '',
    'what went wrong by class, cases',
    ...Object.entries(measured.wrongByClass).map(([name, what]) => `  ${name}: ${listed(what)}`),
  ].join('\n');
}

function floorLine(floor: Floor): string {
  const { name, rate, value, side, limit, holds } = floor;
  const bound = rate ? bounded(rate, side === 'most' ? 'upper' : 'lower') : '';
  const sign = side === 'most' ? '≤' : '≥';
  const counted = rate ? ` (${rate.hits}/${rate.of}${bound})` : '';
  const held = holds === limit ? '' : `, holds ${sign} ${percent(holds).trim()}`;
  return `${reaches(floor) ? '  ' : '✗ '}${name.padEnd(38)}${percent(value)}${counted}, floor ${sign} ${percent(limit).trim()}${held}`;
}

function rateLine(name: string, rate: Rate): string {
  const share = rate.of === 0 ? '      –' : percent(rate.hits / rate.of);
  return `${name.padEnd(44)}${share} (${rate.hits}/${rate.of})`;
}

function bounded({ hits, of }: Rate, side: 'lower' | 'upper'): string {
  const bound = clopperPearson(side, hits, of);
  return `, 95 % ${side === 'lower' ? '≥' : '≤'} ${percent(bound).trim()}`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)} %`.padStart(9);
}

function tableLines(title: string, table: Table, columns?: readonly string[]): readonly string[] {
  const names =
    columns ?? [...new Set(Object.values(table).flatMap((row) => Object.keys(row)))].sort();
  const line = (name: string, cells: readonly (string | number)[]): string =>
    `  ${name.padEnd(14)}${cells.map((cell) => String(cell).padStart(14)).join('')}`;
  return [
    title,
    line('', names),
    ...Object.entries(table).map(([name, row]) =>
      line(
        name,
        names.map((column) => row[column] ?? 0),
      ),
    ),
  ];
}

function listed(what: Readonly<Record<string, number>>): string {
  return Object.entries(what)
    .sort((a, b) => b[1] - a[1])
    .map(([name, times]) => `${name} ×${times}`)
    .join(', ');
}
