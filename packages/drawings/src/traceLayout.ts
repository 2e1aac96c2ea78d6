import type { Seconds, Volts } from '@truesweep/core';
import { ticks } from 'd3-array';
import { axisUnit } from './axisUnit.js';
import type { Point } from './circuitLayout.js';
import { columnPieces } from './columnPieces.js';
import { linearScale } from './linearScale.js';
import { plainNumber } from './plainNumber.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';
import type { TraceDrawingProps } from './traceDrawingProps.js';
import { hasRoomBeside, tracePlot } from './tracePlot.js';
import { voltEnds } from './voltEnds.js';

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
  /** Where the stop's name stands, and whether it ends there. */
  readonly name: Point & { readonly isEnd: boolean };
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
  /** What is drawn behind it, the same way; empty where nothing is. */
  readonly behind: readonly (readonly Point[])[];
  readonly windows: readonly WindowBand[];
  readonly findings: readonly FindingMark[];
}

/** A mark is at least this wide, so that a dropout of milliseconds shows in a sweep of minutes. */
const narrowestMark = 2;

/**
 * Places a stretch of a recorded sweep on axes of time and volts through its columns of lowest and highest values, so that a
 * spike of one sample shows, with the findings and the windows of both stops. Findings outside the stretch are left out.
 */
export function traceLayout({
  columns: drawn,
  findings,
  windows,
  whole,
  width,
  volts: shown,
  behind,
}: Omit<TraceDrawingProps, 'id'>): TraceLayout {
  const { start, end } = drawn;
  const plot = tracePlot(width);
  const both = [...(windows ? [windows.closed, windows.open] : []), ...(whole ? [whole] : [])];
  const columnWidth = (end - start) / (plot.right - plot.left);
  const columnsApart = Math.max(1, (whole?.interval ?? 0) / columnWidth);
  const timeScale = linearScale([start, end], [plot.left, plot.right]);
  const volts = shown
    ? ([shown.low, shown.high] as const)
    : voltEnds(
        drawn.low,
        drawn.high,
        behind?.high ?? [],
        ...both.map(({ low, high }) => [low, high]),
      );
  const voltScale = linearScale(volts, [plot.bottom, plot.top]);
  const x = (at: number) => toHundredths(timeScale(at));
  const y = (at: number) => toHundredths(voltScale(at));
  const inside = (at: number) => Math.min(plot.bottom, Math.max(plot.top, y(at)));
  const unit = axisUnit(Math.max(...volts.map(Math.abs)), 'V');
  const isBeside = hasRoomBeside(plot);
  const band = (stop: 'closed' | 'open'): WindowBand[] => {
    if (!windows) return [];
    const { low, high } = windows[stop];
    if (high < volts[0] || low > volts[1]) return [];
    const [top, bottom] = [inside(high), inside(low)];
    const name = isBeside
      ? { x: plot.right + 6, y: (top + bottom) / 2 + 4, isEnd: false }
      : { x: plot.right - 3, y: stop === 'closed' ? top - 4 : bottom + 13, isEnd: true };
    return [{ stop, top, bottom, name }];
  };
  return {
    width: plot.width,
    height: plot.height,
    plot,
    timeTicks: ticks(start, end, Math.max(3, Math.round((plot.right - plot.left) / 80))).map(
      (at) => ({ at: x(at), text: plainNumber(at) }),
    ),
    voltTicks: ticks(volts[0], volts[1], 5).map((at) => ({
      at: y(at),
      text: plainNumber(at / unit.divisor),
    })),
    voltUnit: unit.name,
    pieces: columnPieces(drawn, plot.left, y, columnsApart),
    behind: behind ? columnPieces(behind, plot.left, y, columnsApart) : [],
    windows: [...band('closed'), ...band('open')],
    findings: findings.flatMap((finding, i) => {
      if (finding.end < start || finding.start > end) return [];
      const from = x(Math.max(start, finding.start));
      const width = Math.max(narrowestMark, x(Math.min(end, finding.end)) - from);
      return [{ number: i + 1, x: from, width }];
    }),
  };
}
