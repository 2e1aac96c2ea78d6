import { checkText, listOf } from '@truesweep/core';
import { bandSentence, bandWords } from '@truesweep/wording';
import { BandPicture } from './BandPicture.js';
import type { PressureDrawingProps } from './bandDrawingProps.js';
import { bandFoot, bandPlot, usualBandWidth } from './bandPlot.js';
import { atLeastZero, checkBand, outcome } from './checkBandProps.js';
import { checkProps, drawingWidth, number } from './checkProps.js';
import { legendEntries } from './legendEntries.js';
import { placeReadings } from './placeReadings.js';
import { signalAxis, signalText } from './signalAxis.js';
import { signedText } from './signedNumber.js';

/**
 * A pressure sensor's signal over pressure, in volts or as a ratio to its supply: the band between its limits, its nominal line, and the readings with what
 * came of them and bars of twice their standard uncertainties.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const points = [
 *   { pressure: 15e3, low: 0.027, nominal: 0.04, high: 0.054 },
 *   { pressure: 115e3, low: 0.927, nominal: 0.94, high: 0.954 },
 * ];
 * const readings = [{ pressure: 96e3, signal: 0.769, outcome: 'conforms' }] as const;
 * const svg = renderToString(h(PressureDrawing, { id: 'port', unit: '1', against: 'absolute', points, readings }));
 * svg.includes('Reading 1: 0.769 at 96\u00a0kPa, conforms.') // => true
 */
export function PressureDrawing(props: PressureDrawingProps) {
  checkProps(props, {
    id: checkText,
    unit: ['V', '1'],
    against: ['absolute', 'gauge'],
    points: listOf({ pressure: number, low: number, 'nominal?': number, high: number }, 2),
    readings: listOf({
      pressure: number,
      'pressureUncertainty?': atLeastZero,
      signal: number,
      'uncertainty?': atLeastZero,
      outcome,
    }),
    'width?': drawingWidth,
  });
  const { id, unit, against, points, readings, width = usualBandWidth } = props;
  checkBand(points, 'pressure');
  const hasNominal = points.every(({ nominal }) => nominal !== undefined);
  const { entries, top } = legendEntries(
    readings.map((reading) => reading.outcome),
    hasNominal ? ['limits', 'nominal'] : ['limits'],
    width,
  );
  const plot = bandPlot(width, 44, top);
  const ends = [...points, ...readings].map(({ pressure }) => pressure);
  const foot = bandFoot(Math.min(...ends), Math.max(...ends), plot, 1000);
  const axis = signalAxis(
    [...points.flatMap(({ low, high }) => [low, high]), ...readings.map(({ signal }) => signal)],
    unit,
    plot,
  );
  const line = (of: (point: (typeof points)[number]) => number) =>
    points.map((point) => ({ x: foot.x(point.pressure), y: axis.y(of(point)) }));
  const placed = placeReadings(
    readings.map(({ pressure, pressureUncertainty = 0, signal, uncertainty = 0, ...rest }) => ({
      outcome: rest.outcome,
      at: pressure,
      atUncertainty: pressureUncertainty,
      value: signal,
      uncertainty,
    })),
    plot,
    foot.x,
    axis.y,
    points.at(-1)!.high > points[0]!.high,
  );
  const at = (pressure: number) => signedText(pressure / 1000, 4, 'kPa');
  const middle = ({ low, high, nominal = (low + high) / 2 }: (typeof points)[number]) =>
    signalText(nominal, unit);
  const [first, last] = [points[0]!, points.at(-1)!];
  return (
    <BandPicture
      id={id}
      kind="pressure-drawing"
      title={bandWords.pressureBand}
      description={bandSentence({
        from: at(first.pressure),
        to: at(last.pressure),
        first: middle(first),
        last: middle(last),
        readings: readings.map(({ pressure, signal, outcome: came }) => ({
          at: at(pressure),
          value: signalText(signal, unit),
          outcome: came,
        })),
      })}
      width={Math.floor(width)}
      height={plot.height}
      plot={plot}
      upTicks={axis.ticks}
      acrossTicks={foot.ticks}
      up={axis.name}
      across={`${bandWords.pressure}, kPa ${bandWords[against]}`}
      legend={entries}
      low={line(({ low }) => low)}
      nominal={hasNominal ? line(({ nominal = 0 }) => nominal) : []}
      high={line(({ high }) => high)}
      readings={placed}
    />
  );
}
