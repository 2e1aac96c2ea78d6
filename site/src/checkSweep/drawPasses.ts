import { PassesDrawing } from '@truesweep/drawings';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { passesByTravel } from './passesByTravel.js';
import type { Trace } from './trace.js';

/** All passes of a recording laid over one another by travel, as SVG. */
export function drawPasses(trace: Trace, id: string, width: number): string {
  const { envelope, score, expected } = trace;
  const { time, values } = envelope;
  trace.passes ??= passesByTravel(time, values, score, expected);
  const { curve } = expected;
  const { findings } = score;
  return renderToString(h(PassesDrawing, { id, curve, passes: trace.passes, findings, width }));
}
