import { type Curve, checkText, InputError, listOf } from '@truesweep/core';
import { curveSentence, drawingWords } from '@truesweep/wording';
import { Axes } from './Axes.js';
import { checkProps, number } from './checkProps.js';
import type { CurveDrawingProps } from './curveDrawingProps.js';
import { curveLayout } from './curveLayout.js';
import { curve as aCurve, windows as someWindows } from './expectationRules.js';
import { Figure } from './Figure.js';
import { polyline } from './polyline.js';
import { quantityText } from './quantityText.js';
import { WindowMark } from './WindowMark.js';
import { Words } from './Words.js';

/**
 * The expected reading over travel as a diagram: axes with their units, the curve, and the windows as
 * bars at the closed and the open stop; where it is compared with another, that one dashed and the difference below.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { expectedCurve } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const svg = renderToString(h(CurveDrawing, { id: 'line', curve: expectedCurve(circuit) }));
 * svg.includes('The reading goes from 0\u00a0V closed to 5\u00a0V open.') // => true
 */
export function CurveDrawing(props: CurveDrawingProps) {
  checkProps(props, {
    id: checkText,
    curve: aCurve,
    'windows?': someWindows,
    'markers?': listOf({ travel: number, volts: number, label: checkText }),
    'compared?': aCurve,
  });
  const { id, curve, windows, markers, compared } = props;
  checkAlike(curve, compared);
  const layout = curveLayout(curve, windows, markers, compared);
  const difference = layout.compared?.difference;
  const range = (stop: 'closed' | 'open') =>
    windows && {
      low: quantityText(windows[stop].low, 'V'),
      high: quantityText(windows[stop].high, 'V'),
    };
  const [closed, open] = [range('closed'), range('open')];
  return (
    <Figure
      id={id}
      kind="curve-drawing"
      title={drawingWords.curve}
      description={curveSentence({
        first: quantityText(curve.volts[0], 'V'),
        last: quantityText(curve.volts.at(-1), 'V'),
        ...(closed && { closed }),
        ...(open && { open }),
        ...(difference && { difference: quantityText(difference.largest, 'V') }),
      })}
      width={layout.width}
      height={layout.height + (difference?.height ?? 0)}
    >
      <Axes
        plot={layout.plot}
        height={layout.height}
        upTicks={layout.voltTicks}
        acrossTicks={layout.travelTicks}
        up={`${drawingWords.reading}, ${layout.voltUnit}`}
        across={`${drawingWords.travel}, %`}
      />
      {layout.windows.map((window) => (
        <WindowMark key={window.stop} {...window} labelY={layout.plot.top - 34} />
      ))}
      {layout.compared && (
        <path class="compared" d={polyline(layout.compared.line)} stroke-dasharray="6 4" />
      )}
      <path class="curve" d={polyline(layout.line)} stroke-width="2" />
      {layout.markers.map(({ x, y, label, onLeft }) => (
        <g key={label} class="marker">
          <path d={`M${x - 4},${y - 4}l8,8m0,-8l-8,8`} />
          <Words
            x={onLeft ? x - 9 : x + 9}
            y={y + (onLeft ? -6 : 16)}
            anchor={onLeft ? 'end' : 'start'}
          >
            {label}
          </Words>
        </g>
      ))}
      {difference && (
        <g class="difference" transform={`translate(0,${layout.height})`}>
          <Axes
            plot={difference.plot}
            height={difference.height}
            upTicks={difference.voltTicks}
            acrossTicks={layout.travelTicks}
            up={`${drawingWords.difference}, ${difference.voltUnit}`}
            across={`${drawingWords.travel}, %`}
          />
          <path d={polyline(difference.line)} stroke-width="2" />
        </g>
      )}
    </Figure>
  );
}

/** Refuses a curve to compare with that is not at the travels of the drawn one. */
function checkAlike({ travel }: Curve, compared: Curve | undefined): void {
  if (!compared) return;
  const others = compared.travel;
  if (others.length === travel.length && travel.every((at, i) => at === others[i])) return;
  throw new InputError(
    'length-mismatch',
    'props.compared.travel',
    `props.compared has ${others.length} points; it must have the ${travel.length} travels of props.curve.`,
  );
}
