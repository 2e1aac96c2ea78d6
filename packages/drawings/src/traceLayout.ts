import type { ExpectedWindows, Finding, Seconds, SweepColumns, Volts } from '@truesweep/core';
import { nice, ticks } from 'd3-array';
import { axisUnit } from './axisUnit.js';
import type { Point } from './circuitLayout.js';
import { linearScale } from './linearScale.js';
import { plainNumber } from './plainNumber.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';
import { plot, size, traceColumns } from './tracePlot.js';

/** The whole sweep, where a stretch of it is drawn. */
export interface WholeSweep {
  /** Its lowest reading, V, any: the axis of volts holds it, whatever the stretch. */
  readonly low: Volts;
  /** Its highest reading, V, from `low` up. */
  readonly high: Volts;
  /** The usual interval between its samples, s, above 0: where they stand farther apart than columns they are still joined. */
  readonly interval: Seconds;
}

/** A finding over the trace: its stretch, and the number that it has in the table of findings. */
interface FindingMark {
  readonly number: number;
  readonly x: number;
  readonly width: number;
}

/** The window of a stop as a band across the trace. */
interface WindowBand {
  readonly stop: 'closed' | 'open';
  readonly top: number;
  readonly bottom: number;
}

/** Where everything of a trace's drawing lies. */
export interface TraceLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
  readonly timeTicks: readonly Tick[];
  readonly voltTicks: readonly Tick[];
  readonly voltUnit: string;
  /** The trace in pieces without gaps: down and up again in each column. */
  readonly pieces: readonly (readonly Point[])[];
  readonly windows: readonly WindowBand[];
  readonly findings: readonly FindingMark[];
}

/** A mark is at least this wide, so that a dropout of milliseconds shows in a sweep of minutes. */
const narrowestMark = 2;
/** Columns, or usual intervals between samples, without a sample for this long are a gap. */
const gapLength = 3;

/**
 * Places a stretch of a recorded sweep on axes of time and volts through its columns of lowest and highest values, so that a
 * spike of one sample shows, with the findings and the windows of both stops.
 *
 * @param drawn The stretch in {@link traceColumns} columns.
 * @param findings In the order of their numbers, from 1; those outside the stretch are left out.
 */
export function traceLayout(
  drawn: SweepColumns,
  findings: readonly Finding[],
  windows?: ExpectedWindows,
  whole?: WholeSweep,
): TraceLayout {
  const { start, end } = drawn;
  const both = [...(windows ? [windows.closed, windows.open] : []), ...(whole ? [whole] : [])];
  const least = Math.min(0, ...drawn.low, ...both.map(({ low }) => low));
  const most = Math.max(0, ...drawn.high, ...both.map(({ high }) => high));
  const columnWidth = (end - start) / traceColumns;
  const timeScale = linearScale([start, end], [plot.left, plot.right]);
  const volts = nice(least, most || 1, 5);
  const voltScale = linearScale(volts, [plot.bottom, plot.top]);
  const x = (at: number) => toHundredths(timeScale(at));
  const y = (at: number) => toHundredths(voltScale(at));
  const unit = axisUnit(Math.max(...volts.map(Math.abs)), 'V');
  const band = (stop: 'closed' | 'open'): WindowBand[] =>
    windows ? [{ stop, top: y(windows[stop].high), bottom: y(windows[stop].low) }] : [];
  return {
    ...size,
    plot,
    timeTicks: ticks(start, end, 8).map((at) => ({ at: x(at), text: plainNumber(at) })),
    voltTicks: ticks(...volts, 5).map((at) => ({
      at: y(at),
      text: plainNumber(at / unit.divisor),
    })),
    voltUnit: unit.name,
    pieces: pieces(drawn, y, Math.max(1, (whole?.interval ?? 0) / columnWidth)),
    windows: [...band('closed'), ...band('open')],
    findings: findings.flatMap((finding, i) => {
      if (finding.end < start || finding.start > end) return [];
      const from = x(Math.max(start, finding.start));
      const width = Math.max(narrowestMark, x(Math.min(end, finding.end)) - from);
      return [{ number: i + 1, x: from, width }];
    }),
  };
}

function pieces(
  { column, low, high }: SweepColumns,
  y: (volts: number) => number,
  columnsApart: number,
): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  for (let i = 0; i < column.length; i++) {
    const isApart = i === 0 || column[i]! - column[i - 1]! > gapLength * columnsApart;
    if (isApart) found.push([]);
    const at = plot.left + column[i]! + 0.5;
    const [first, second] = i % 2 === 0 ? [low[i]!, high[i]!] : [high[i]!, low[i]!];
    const piece = found.at(-1)!;
    piece.push({ x: at, y: y(first) });
    if (first !== second) piece.push({ x: at, y: y(second) });
  }
  return found;
}
