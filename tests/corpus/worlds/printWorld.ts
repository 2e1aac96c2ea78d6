import { kinds, type Table } from '../measure.js';
import type { FactorRow, Figure, MeasuredWorld } from './measureWorld.js';
import { keeps, type WorldGoal, worldGoals } from './worldGoals.js';

/**
 * All figures of a world as text: `✗` where what must hold does not, `·` where the goal is not reached; so many of the worst
 * factors.
 */
export function printWorld(
  world: 'plate' | 'habits',
  measured: MeasuredWorld,
  rows: number,
): string {
  const line = (figure: Figure): string =>
    figureLine(figure, world, worldGoals.find(({ name }) => name === figure.name)!);
  return [
    `the world of ${world}: ${measured.cases} cases`,
    ...measured.figures.map(line),
    '',
    'kind: truth down, reported across',
    ...tableLines(measured.kindTable, [...kinds, 'missed']),
    '',
    'verdict or cause wrong, by what was varied',
    ...measured.factors.slice(0, rows).map(rowLine),
    '',
    'events missed or named wrong',
    ...measured.missed.slice(0, rows).map(rowLine),
  ].join('\n');
}

function figureLine(figure: Figure, world: 'plate' | 'habits', goal: WorldGoal): string {
  const { name, value, rate, atLeast = 0, atMost = 1 } = figure;
  const { side, holds } = goal;
  const sign = side === 'most' ? '≤' : '≥';
  const bound = side === 'most' ? atMost : atLeast;
  const counted = rate ? ` (${rate.hits}/${rate.of}, 95 % ${sign} ${percent(bound).trim()})` : '';
  const mark = !keeps(figure, side, holds[world])
    ? '✗'
    : keeps(figure, side, goal.goal)
      ? ' '
      : '·';
  const limits = `holds ${sign} ${percent(holds[world]).trim()}, goal ${sign} ${percent(goal.goal).trim()}`;
  return `${mark} ${name.padEnd(38)}${percent(value)}${counted.padEnd(32)} ${limits}`;
}

function percent(share: number | undefined): string {
  return (share === undefined ? '–' : `${(100 * share).toFixed(2)} %`).padStart(9);
}

function rowLine({ factor, hits, of }: FactorRow): string {
  return `  ${factor.padEnd(42)}${`${hits}/${of}`.padStart(9)}${percent(hits / of)}`;
}

function tableLines(table: Table, columns: readonly string[]): readonly string[] {
  const line = (name: string, cells: readonly (string | number)[]): string =>
    `  ${name.padEnd(12)}${cells.map((cell) => String(cell).padStart(11)).join('')}`;
  return [
    line('', columns),
    ...Object.entries(table).map(([name, row]) =>
      line(
        name,
        columns.map((column) => row[column] ?? 0),
      ),
    ),
  ];
}
