import { checkText } from '@truesweep/core';
import { drawingWords, traceSentence } from '@truesweep/wording';
import { Axes } from './Axes.js';
import {
  checkProps,
  drawingWidth,
  number,
  columns as someColumns,
  voltRange,
} from './checkProps.js';
import { windows as someWindows } from './expectationRules.js';
import { Figure } from './Figure.js';
import { findings as someFindings } from './findingsRule.js';
import { polyline } from './polyline.js';
import { quantityText } from './quantityText.js';
import type { TraceDrawingProps } from './traceDrawingProps.js';
import { traceLayout } from './traceLayout.js';
import { Words } from './Words.js';

/** Numbers closer than this would cover each other. */
const numberWidth = 16;

/**
 * A recorded sweep, or a stretch of one, over time: the trace with every spike of a single sample, the windows of both stops as bands, the findings
 * as numbered marks. However long the recording, the drawing has some hundred columns; what lies beyond the readings that are shown is cut off.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { sweepColumns } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const sweep = { time: Float64Array.of(0, 1, 2), signal: Float64Array.of(0.5, 4, 0.5) };
 * const columns = sweepColumns(sweep, traceColumns());
 * const svg = renderToString(h(TraceDrawing, { id: 'trace', columns, findings: [] }));
 * svg.includes('2\u00a0s of signal between 500\u00a0mV and 4\u00a0V; nothing is marked.') // => true
 */
export function TraceDrawing(props: TraceDrawingProps) {
  checkProps(props, {
    id: checkText,
    columns: someColumns,
    findings: someFindings,
    'windows?': someWindows,
    'whole?': { low: number, high: number, interval: number },
    'behind?': someColumns,
    'width?': drawingWidth,
    'volts?': voltRange,
  });
  const { id, columns } = props;
  const layout = traceLayout(props);
  const { plot } = layout;
  const clip = `${id}-plot`;
  const { start, end, low, high } = columns;
  return (
    <Figure
      id={id}
      kind="trace-drawing"
      title={drawingWords.trace}
      description={traceSentence({
        seconds: quantityText(end - start, 's'),
        low: quantityText(Math.min(...low), 'V'),
        high: quantityText(Math.max(...high), 'V'),
        findings: layout.findings.length,
      })}
      width={layout.width}
      height={layout.height}
    >
      <Axes
        plot={plot}
        height={layout.height}
        upTicks={layout.voltTicks}
        acrossTicks={layout.timeTicks}
        up={`${drawingWords.reading}, ${layout.voltUnit}`}
        across={`${drawingWords.time}, s`}
      />
      <clipPath id={clip}>
        <rect
          x={plot.left}
          y={plot.top - 2}
          width={plot.right - plot.left}
          height={plot.bottom - plot.top + 4}
        />
      </clipPath>
      {layout.windows.map(({ stop, top, bottom, name }) => (
        <g key={stop} class={`window ${stop}`}>
          <rect
            x={plot.left}
            y={top}
            width={plot.right - plot.left}
            height={bottom - top}
            fill="currentColor"
            fill-opacity="0.12"
            stroke-width="0.6"
            stroke-dasharray="2 3"
          />
          <Words x={name.x} y={name.y} anchor={name.isEnd ? 'end' : 'start'}>
            {drawingWords[stop]}
          </Words>
        </g>
      ))}
      {layout.findings.map(({ number, x, width }, i) => (
        <g key={number} class="finding">
          <rect
            x={x}
            y={plot.top - 12}
            width={width}
            height={plot.bottom - plot.top + 12}
            fill="currentColor"
            fill-opacity="0.28"
            stroke="none"
          />
          {hasRoom(layout.findings, i) && (
            <Words x={x + width / 2} y={plot.top - 16} anchor="middle" bold>
              {String(number)}
            </Words>
          )}
        </g>
      ))}
      {layout.behind.length > 0 && (
        <path
          class="behind"
          d={layout.behind.map(polyline).join('')}
          stroke-width="1"
          stroke-opacity="0.45"
          stroke-dasharray="4 2"
          clip-path={`url(#${clip})`}
        />
      )}
      <path
        class="trace"
        d={layout.pieces.map(polyline).join('')}
        stroke-width="1"
        clip-path={`url(#${clip})`}
      />
    </Figure>
  );
}

/** Whether a finding's number stands clear of the one before it that is shown. */
function hasRoom(marks: readonly { readonly x: number }[], index: number): boolean {
  let last = Number.NEGATIVE_INFINITY;
  for (const [i, { x }] of marks.entries()) {
    const shown = x - last >= numberWidth || x < last;
    if (i === index) return shown;
    if (shown) last = x;
  }
  return false;
}
