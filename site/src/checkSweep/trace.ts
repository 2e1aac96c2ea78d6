import {
  type DrawingEnvelope,
  drawingEnvelope,
  type Expectation,
  type ExpectedWindows,
  envelopeColumns,
  type Finding,
  type Seconds,
} from '@truesweep/core';
import { TraceDrawing, traceColumns, type WholeSweep } from '@truesweep/drawings';
import type { ReportRecording } from '@truesweep/report';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { TimeStretch } from './protocol.js';

/** What any stretch of a recording's trace is drawn from. */
export interface Trace {
  readonly envelope: DrawingEnvelope;
  readonly stretch: TimeStretch;
  readonly shortest: Seconds;
  readonly whole: WholeSweep;
  readonly findings: readonly Finding[];
  readonly windows?: ExpectedWindows;
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
    findings: score.findings,
    ...(!score.abrupt && { windows: expected.windows }),
  };
}

/** A stretch of a trace as SVG. */
export function drawTrace(trace: Trace, id: string, { start, end }: TimeStretch): string {
  const { envelope, findings, windows, whole } = trace;
  const columns = { start, end, ...envelopeColumns(envelope, start, end, traceColumns) };
  return renderToString(
    h(TraceDrawing, { id, columns, findings, whole, ...(windows && { windows }) }),
  );
}
