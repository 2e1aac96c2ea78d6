import type { ExpectedWindows, Finding, SweepColumns, Volts } from '@truesweep/core';
import type { WholeSweep } from './traceLayout.js';

/** What `TraceDrawing` and `traceSvg` draw. */
export interface TraceDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The sweep, or a stretch of it, in `traceColumns(width)` columns. */
  readonly columns: SweepColumns;
  /** Marked and numbered from 1 in this order; those in a table beside it carry the same numbers. */
  readonly findings: readonly Finding[];
  /** Windows of both stops, drawn as bands across; none when left out. */
  readonly windows?: ExpectedWindows;
  /** The whole sweep, where `columns` are a stretch of it. */
  readonly whole?: WholeSweep;
  /** Another sweep over the same stretch and in as many columns, drawn pale behind it, such as a sound one; none when left out. */
  readonly behind?: SweepColumns;
  /** The drawing's width, 240 to 4000; 760 when left out. Shown as wide, its words have 13 pixels. */
  readonly width?: number;
  /** The readings from foot to top of the drawing, V, from low to high; all of the sweep and its windows when left out. */
  readonly volts?: { readonly low: Volts; readonly high: Volts };
}
