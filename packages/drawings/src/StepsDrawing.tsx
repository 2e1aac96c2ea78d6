import { checkFields, checkText, InputError, listOf } from '@truesweep/core';
import { bandWords, drawingWords, stepsSentence } from '@truesweep/wording';
import { ticks } from 'd3-array';
import { Axes } from './Axes.js';
import { outcome } from './checkBandProps.js';
import { checkProps, drawingWidth, number, columns as someColumns } from './checkProps.js';
import { columnPieces } from './columnPieces.js';
import { Figure } from './Figure.js';
import { legendEntries } from './legendEntries.js';
import { linearScale } from './linearScale.js';
import { OutcomeLegend } from './OutcomeLegend.js';
import { OutcomeSymbol } from './OutcomeSymbol.js';
import { polyline } from './polyline.js';
import { quantityText } from './quantityText.js';
import { signalAxis, signalText } from './signalAxis.js';
import { signedNumber } from './signedNumber.js';
import type { DrawnStretch, StepsDrawingProps } from './stepsDrawingProps.js';
import { toHundredths } from './toHundredths.js';
import { tracePlot } from './tracePlot.js';
import { Words } from './Words.js';

/** Numbers closer than this would cover each other. */
const numberWidth = 16;

/**
 * A recording in which a quantity was held step by step: the signal, each held stretch with its mean and its window, and what came of it.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const columns = { start: 0, end: 10, column: [0, 328, 655], low: [4, 4, 2.5], high: [4, 4, 2.5] };
 * const stretches = [{ start: 0, end: 4, mean: 4.02, low: 3.9, high: 4.1, outcome: 'conforms' }] as const;
 * const svg = renderToString(h(StepsDrawing, { id: 'steps', unit: 'V', columns, stretches }));
 * svg.includes('Stretch 1: 4.02\u00a0V, conforms.') // => true
 */
export function StepsDrawing(props: StepsDrawingProps) {
  checkProps(props, {
    id: checkText,
    unit: ['V', '1'],
    columns: someColumns,
    stretches: listOf(aStretch),
    'width?': drawingWidth,
  });
  const { id, unit, columns, stretches, width } = props;
  const usual = tracePlot(width);
  const { entries, top } = legendEntries(
    stretches.map((stretch) => stretch.outcome),
    stretches.some(hasWindow) ? ['limits'] : [],
    usual.width,
  );
  const lower = top + 12 - usual.top;
  const [plot, height] = [
    { ...usual, top: top + 12, bottom: usual.bottom + lower },
    usual.height + lower,
  ];
  const { start, end, low, high } = columns;
  const axis = signalAxis(
    [
      ...Array.from(low),
      ...Array.from(high),
      ...stretches.flatMap((one) => [one.mean, one.low ?? one.mean, one.high ?? one.mean]),
    ],
    unit,
    plot,
  );
  const scale = linearScale([start, end], [plot.left, plot.right]);
  const x = (at: number) => toHundredths(Math.min(plot.right, Math.max(plot.left, scale(at))));
  const shown = stretches.flatMap((stretch, i) =>
    stretch.end < start || stretch.start > end
      ? []
      : [{ ...stretch, number: i + 1, from: x(stretch.start), to: x(stretch.end) }],
  );
  const spoken = (value: number) => signalText(value, unit);
  return (
    <Figure
      id={id}
      kind="steps-drawing"
      title={bandWords.steps}
      description={stepsSentence({
        seconds: quantityText(end - start, 's'),
        low: spoken(Math.min(...Array.from(low))),
        high: spoken(Math.max(...Array.from(high))),
        stretches: stretches.map(({ mean, outcome: came }) => ({
          value: spoken(mean),
          outcome: came,
        })),
      })}
      width={usual.width}
      height={height}
    >
      <Axes
        plot={plot}
        height={height}
        upTicks={axis.ticks}
        acrossTicks={ticks(start, end, Math.max(3, Math.round((plot.right - plot.left) / 80))).map(
          (at) => ({ at: x(at), text: signedNumber(at) }),
        )}
        up={axis.name}
        across={`${drawingWords.time}, s`}
      />
      <OutcomeLegend entries={entries} />
      {shown.map((stretch) => (
        <g key={stretch.number} class="stretch">
          {hasWindow(stretch) && (
            <rect
              x={stretch.from}
              y={axis.y(stretch.high)}
              width={toHundredths(stretch.to - stretch.from)}
              height={toHundredths(axis.y(stretch.low) - axis.y(stretch.high))}
              fill="currentColor"
              fill-opacity="0.18"
              stroke-width="0.6"
            />
          )}
          <path d={`M${stretch.from},${axis.y(stretch.mean)}H${stretch.to}`} stroke-width="3" />
        </g>
      ))}
      <path
        class="trace"
        d={columnPieces(columns, plot.left, axis.y, usualGap(columns)).map(polyline).join('')}
        stroke-width="1"
      />
      {shown.map(({ number: which, outcome: came, mean, from, to }, i) => {
        const middle = toHundredths((from + to) / 2);
        const isFree = shown
          .slice(0, i)
          .every((before) => Math.abs((before.from + before.to) / 2 - middle) >= numberWidth);
        return (
          <g key={which} class="reading">
            <OutcomeSymbol outcome={came} x={middle} y={axis.y(mean)} />
            {isFree && (
              <Words x={middle} y={plot.top - 4} anchor="middle" bold>
                {String(which)}
              </Words>
            )}
          </g>
        );
      })}
    </Figure>
  );
}

/** How many columns usually lie between two that hold samples. */
function usualGap({ column }: StepsDrawingProps['columns']): number {
  const gaps = Array.from(column, (at, i) => (i === 0 ? 1 : at - column[i - 1]!)).sort(
    (a, b) => a - b,
  );
  return Math.max(1, gaps[Math.floor(gaps.length / 2)]!);
}

function hasWindow<Stretch extends DrawnStretch>(
  stretch: Stretch,
): stretch is Stretch & Required<Pick<DrawnStretch, 'low' | 'high'>> {
  return stretch.low !== undefined && stretch.high !== undefined;
}

function aStretch(value: unknown, path: string): void {
  checkFields(value, path, {
    start: number,
    end: number,
    mean: number,
    'low?': number,
    'high?': number,
    outcome,
  });
  const stretch = value as DrawnStretch;
  if (!(stretch.start < stretch.end)) refuseOrder(`${path}.end`, `${path}.start`, 'after');
  if (hasWindow(stretch) && stretch.low > stretch.high)
    refuseOrder(`${path}.high`, `${path}.low`, 'not below');
}

function refuseOrder(one: string, other: string, wanted: string): never {
  throw new InputError('out-of-order', one, `${one} must be ${wanted} ${other}.`);
}
