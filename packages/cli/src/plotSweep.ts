import {
  type Finding,
  formatQuantity,
  type Sweep,
  sweepColumns,
  type Volts,
} from '@truesweep/core';
import { plotWords } from '@truesweep/wording';
import { plot } from 'simple-ascii-chart';
import { paragraph, type TextPart } from './textPart.js';

const usualHeight = 14;
/** Room for the axis of volts. */
const axis = 10;

/** How a sweep is drawn. */
interface PlotLooks {
  /** Lines of the curve. */
  readonly height?: number;
  /** Lowest and highest reading that have room at least; those of the sweep when left out. */
  readonly range?: [low: Volts, high: Volts];
}

/**
 * A sweep drawn with characters: in each column the reading that lies farthest from the middle one, so that a spike of one sample
 * shows; below it the numbers of the findings where they are.
 */
export function plotSweep(
  sweep: Sweep,
  findings: readonly Finding[],
  width: number,
  { height = usualHeight, range }: PlotLooks = {},
): readonly TextPart[] {
  const columns = width - axis;
  const drawn = sweepColumns(sweep, columns);
  const { start, end } = drawn;
  const points = Array.from(drawn.column, (column, i): [number, number] => [
    column,
    farthest(drawn.low, drawn.high, i),
  ]);
  const lines = plot(points, {
    width: columns,
    height,
    hideXAxis: true,
    ...(range && { yRange: withRoomFor(points, range) }),
  })
    .split('\n')
    .map((line) => line.trimEnd())
    .filter((line) => line !== '');
  const left = Math.max(...lines.map((line) => line.search(/[┤│]/))) + 1;
  const at = (seconds: number): number =>
    left + Math.floor(((seconds - start) / (end - start)) * (columns - 1));
  const marks = findings.map(({ start: from }, i) => [at(from), String(i + 1)] as const);
  const foot = [
    [left, seconds(start)],
    [left + columns - seconds(end).length, seconds(end)],
  ] as const;
  return [
    plotWords.title,
    ...lines,
    ...(marks.length > 0 ? [placed(marks)] : []),
    placed(foot),
    ...(marks.length > 0 ? [paragraph(plotWords.marks)] : []),
  ];
}

/** A range that the readings lie in too: what lies outside would not be drawn. */
function withRoomFor(
  points: readonly (readonly [number, number])[],
  [low, high]: [Volts, Volts],
): [Volts, Volts] {
  const readings = points.map(([, reading]) => reading);
  return [Math.min(low, ...readings), Math.max(high, ...readings)];
}

/** Of a column's extremes the one farther from those of its neighbours. */
function farthest(low: Float64Array, high: Float64Array, i: number): number {
  const before = Math.max(0, i - 1);
  const after = Math.min(low.length - 1, i + 1);
  const around = (low[before]! + high[before]! + low[after]! + high[after]!) / 4;
  return Math.abs(low[i]! - around) > Math.abs(high[i]! - around) ? low[i]! : high[i]!;
}

/** Words at their columns; one that another covers is left out. */
function placed(words: readonly (readonly [column: number, word: string])[]): string {
  let line = '';
  for (const [column, word] of words) {
    if (line !== '' && column <= line.length) continue;
    line = line.padEnd(column) + word;
  }
  return line;
}

function seconds(value: number): string {
  return formatQuantity(value, 's', { trim: true });
}
