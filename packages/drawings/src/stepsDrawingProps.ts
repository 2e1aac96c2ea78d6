import type { CheckOutcome, Seconds, SweepColumns } from '@truesweep/core';

/** A stretch of a recording that was held, with what it must have read. */
export interface DrawnStretch {
  /** When it begins, s, by the recording's clock; any. */
  readonly start: Seconds;
  /** When it ends, s, after it begins. */
  readonly end: Seconds;
  /** What it read on average, in the unit of the drawing, any. */
  readonly mean: number;
  /** The lowest that is right, in the unit of the drawing, any; no window is drawn where either limit is left out. */
  readonly low?: number;
  /** The highest that is right, in the unit of the drawing, not below the lowest; no window is drawn where either limit is left out. */
  readonly high?: number;
  /** What came of its judgement, as a code. */
  readonly outcome: CheckOutcome;
}

/** What `StepsDrawing` draws. */
export interface StepsDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The unit of the signal: V, or 1 for a ratio to the supply. */
  readonly unit: 'V' | '1';
  /** The recording in columns: `sweepColumns` with as many columns as `traceColumns` says for this width. */
  readonly columns: SweepColumns;
  /** The stretches that were held, 0 or more, numbered from 1 in this order. */
  readonly stretches: readonly DrawnStretch[];
  /** The drawing's width, 240 to 4000; 760 when left out. */
  readonly width?: number;
}
