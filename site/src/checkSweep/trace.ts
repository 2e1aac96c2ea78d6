import {
  type DrawingEnvelope,
  drawingEnvelope,
  type Expectation,
  envelopeColumns,
  type Score,
  type Seconds,
} from '@truesweep/core';
import { type DrawnPass, TraceDrawing, traceColumns, type WholeSweep } from '@truesweep/drawings';
import type { ReportRecording } from '@truesweep/report';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { TimeStretch, TraceWindow } from './protocol.js';

/** What any part of a recording's trace is drawn from. */
export interface Trace {
  readonly envelope: DrawingEnvelope;
  readonly stretch: TimeStretch;
  readonly shortest: Seconds;
  readonly whole: WholeSweep;
  readonly score: Pick<Score, 'findings' | 'strokes' | 'abrupt'>;
  readonly expected: Expectation;
  /** Laid over one another when they are first asked for. */
  passes?: readonly DrawnPass[];
}

/** The shortest stretch shows about so many samples. */
const fewestSamples = 20;

/** Prepares a recording's trace: the extremes of ever longer blocks, from which each stretch is drawn at once. */
export function traceOf({ sweep, score }: ReportRecording, expected: Expectation): Trace {
  const { time, signal } = sweep;
  const envelope = drawingEnvelope(time, signal);
  const [start, last] = [time[0] ?? 0, time.at(-1) ?? 0];
  const end = Math.max(last, start + 1e-6);
  const interval = (end - start) / Math.max(1, time.length - 1);
  const { low, high } = envelopeColumns(envelope, start, end, 1);
  return {
    envelope,
    stretch: { start, end },
    shortest: Math.min(end - start, interval * fewestSamples),
    whole: { low: low[0] ?? 0, high: high[0] ?? 0, interval },
    score,
    expected,
  };
}

/** A part of a trace as SVG, as wide as its place. */
export function drawTrace(
  trace: Trace,
  id: string,
  { stretch, volts, width }: TraceWindow,
): string {
  const { envelope, whole, expected } = trace;
  const { findings, abrupt } = trace.score;
  const columns = {
    ...stretch,
    ...envelopeColumns(envelope, stretch.start, stretch.end, traceColumns(width)),
  };
  const windows = !abrupt && { windows: expected.windows };
  return renderToString(
    h(TraceDrawing, { id, columns, findings, whole, width, ...windows, ...(volts && { volts }) }),
  );
}
