import { elementText } from './elementText.js';
import { TraceDrawing } from './TraceDrawing.js';
import type { TraceDrawingProps } from './traceDrawingProps.js';

/**
 * A recorded sweep, or a stretch of one, over time: what `TraceDrawing` draws, as the text of an `svg` element. It needs no Preact, and its namespace stands
 * in it, so that it can be written to a file or put into a page as it is.
 *
 * @example
 * import { sweepColumns } from '@truesweep/core';
 *
 * const sweep = { time: Float64Array.of(0, 1, 2), signal: Float64Array.of(0.5, 4, 0.5) };
 * const columns = sweepColumns(sweep, traceColumns());
 * const svg = traceSvg({ id: 'trace', columns, findings: [] });
 * svg.includes('2\u00a0s of signal between 500\u00a0mV and 4\u00a0V; nothing is marked.') // => true
 */
export function traceSvg(props: TraceDrawingProps): string {
  return elementText(TraceDrawing(props));
}
