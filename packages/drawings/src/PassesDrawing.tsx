import { checkFields, checkText, InputError, listOf } from '@truesweep/core';
import { drawingWords, passesSentence } from '@truesweep/wording';
import { ticks } from 'd3-array';
import { Axes } from './Axes.js';
import { axisUnit } from './axisUnit.js';
import { checkProps, drawingWidth, numbers } from './checkProps.js';
import { curve as aCurve } from './expectationRules.js';
import { Figure } from './Figure.js';
import { findings as someFindings } from './findingsRule.js';
import { linearScale } from './linearScale.js';
import type { DrawnPass, PassesDrawingProps } from './passesDrawingProps.js';
import { plainNumber } from './plainNumber.js';
import { polyline } from './polyline.js';
import { toHundredths } from './toHundredths.js';
import { tracePlot } from './tracePlot.js';
import { voltEnds } from './voltEnds.js';
import { Words } from './Words.js';

/** Numbers closer than this would cover each other. */
const numberWidth = 16;

/**
 * Passes laid over one another by travel, with the expected reading as a dashed line: what stands at one place on every pass belongs to the
 * track, what one pass alone shows does not.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { expectedCurve } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const curve = expectedCurve({ source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} });
 * const pass = { direction: 'opening', travel: [0, 0.5, 1], low: [0, 0, 5], high: [0, 2.5, 5] } as const;
 * const svg = renderToString(h(PassesDrawing, { id: 'passes', curve, passes: [pass], findings: [] }));
 * svg.includes('1 pass over the travel') // => true
 */
export function PassesDrawing(props: PassesDrawingProps) {
  checkProps(props, {
    id: checkText,
    curve: aCurve,
    passes: listOf(aPass),
    findings: someFindings,
    'width?': drawingWidth,
  });
  const { id, curve, passes, findings, width } = props;
  const plot = tracePlot(width);
  const volts = voltEnds(curve.volts, ...passes.flatMap(({ low, high }) => [low, high]));
  const across = linearScale([0, 1], [plot.left, plot.right]);
  const up = linearScale(volts, [plot.bottom, plot.top]);
  const x = (travel: number) => toHundredths(across(Math.min(1.02, Math.max(-0.02, travel))));
  const y = (at: number) => toHundredths(up(at));
  const unit = axisUnit(Math.max(...volts.map(Math.abs)), 'V');
  const marks = findings.flatMap(({ travel, unplaced }, i) =>
    unplaced ? [] : [{ number: i + 1, x: x(travel) }],
  );
  return (
    <Figure
      id={id}
      kind="passes-drawing"
      title={drawingWords.passes}
      description={passesSentence(passes.length, marks.length)}
      width={plot.width}
      height={plot.height}
    >
      <Axes
        plot={plot}
        height={plot.height}
        upTicks={ticks(...volts, 5).map((at) => ({
          at: y(at),
          text: plainNumber(at / unit.divisor),
        }))}
        acrossTicks={ticks(0, 1, 5).map((at) => ({ at: x(at), text: `${Math.round(at * 100)}` }))}
        up={`${drawingWords.reading}, ${unit.name}`}
        across={`${drawingWords.travel}, %`}
      />
      <path
        class="curve"
        d={polyline(Array.from(curve.travel, (at, i) => ({ x: x(at), y: y(curve.volts[i] ?? 0) })))}
        stroke-width="2"
        stroke-dasharray="7 4"
      />
      {marks.map(({ number, x: at }, i) => (
        <g key={number} class="finding">
          <path d={`M${at},${plot.top}V${plot.bottom}`} stroke-dasharray="2 3" stroke-width="1" />
          {marks.slice(0, i).every((before) => Math.abs(before.x - at) >= numberWidth) && (
            <Words x={at} y={plot.top - 6} anchor="middle" bold>
              {String(number)}
            </Words>
          )}
        </g>
      ))}
      {passes.map((pass, i) => (
        <path
          key={i}
          class={`pass ${pass.direction}`}
          d={polyline(downAndUp(pass).map((at) => ({ x: x(at.travel), y: y(at.volts) })))}
          stroke-width="1"
        />
      ))}
    </Figure>
  );
}

/** Down and up again at each place, so that a spike of one sample shows. */
function downAndUp({ travel, low, high }: DrawnPass) {
  return Array.from(travel, (at, i) => {
    const both = [low[i] ?? 0, high[i] ?? 0];
    return (i % 2 === 0 ? both : both.reverse()).map((volts) => ({ travel: at, volts }));
  }).flat();
}

function aPass(value: unknown, path: string): void {
  checkFields(value, path, {
    direction: ['opening', 'closing'],
    travel: numbers,
    low: numbers,
    high: numbers,
  });
  const { travel, low, high } = value as DrawnPass;
  for (const [name, list] of Object.entries({ low, high })) {
    if (list.length === travel.length && list.length > 0) continue;
    throw new InputError(
      'length-mismatch',
      `${path}.${name}`,
      `${path}.${name} must hold as many numbers as ${path}.travel, 1 or more.`,
    );
  }
}
