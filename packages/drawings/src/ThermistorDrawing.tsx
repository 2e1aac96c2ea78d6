import { checkText, listOf } from '@truesweep/core';
import { bandSentence, drawingWords } from '@truesweep/wording';
import { BandPicture } from './BandPicture.js';
import type { ThermistorDrawingProps } from './bandDrawingProps.js';
import { bandFoot, bandPlot, usualBandWidth } from './bandPlot.js';
import {
  aboveZero,
  atLeastZero,
  celsius,
  checkBand,
  checkProps,
  drawingWidth,
  ohmsOrOpen,
  outcome,
} from './checkProps.js';
import { legendEntries } from './legendEntries.js';
import { logAxis } from './logAxis.js';
import { placeReadings } from './placeReadings.js';
import { quantityText } from './quantityText.js';
import { signedText } from './signedNumber.js';

/** How many times beyond the limits a reading still widens the axis: what is farther out stands at the edge. */
const widest = 10;

/**
 * A thermistor's resistance over temperature on an axis of logarithms: the band between its limits, its nominal curve, and the readings with what came
 * of them and bars of twice their standard uncertainties.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const points = [
 *   { temperature: 0, low: 5400, nominal: 5975, high: 6600 },
 *   { temperature: 100, low: 165, nominal: 175.7, high: 186 },
 * ];
 * const readings = [{ temperature: 20, ohms: 2510, outcome: 'conforms' }] as const;
 * const svg = renderToString(h(ThermistorDrawing, { id: 'ntc', points, readings }));
 * svg.includes('Reading 1: 2.51\u00a0kΩ at 20\u00a0°C, conforms.') // => true
 */
export function ThermistorDrawing(props: ThermistorDrawingProps) {
  checkProps(props, {
    id: checkText,
    points: listOf(
      { temperature: celsius, low: aboveZero, 'nominal?': aboveZero, high: aboveZero },
      2,
    ),
    readings: listOf({
      temperature: celsius,
      'temperatureUncertainty?': atLeastZero,
      ohms: ohmsOrOpen,
      'uncertainty?': atLeastZero,
      outcome,
    }),
    'width?': drawingWidth,
  });
  const { id, points, readings, width = usualBandWidth } = props;
  checkBand(points, 'temperature');
  const hasNominal = points.every(({ nominal }) => nominal !== undefined);
  const { entries, top } = legendEntries(
    readings.map((reading) => reading.outcome),
    [
      ...(points.some(({ low, high }) => low < high) ? (['limits'] as const) : []),
      ...(hasNominal ? (['nominal'] as const) : []),
    ],
    width,
  );
  const plot = bandPlot(width, 60, top);
  const ends = [...points, ...readings].map(({ temperature }) => temperature);
  const foot = bandFoot(Math.min(...ends), Math.max(...ends), plot);
  const [least, most] = [
    Math.min(...points.map(({ low }) => low)),
    Math.max(...points.map(({ high }) => high)),
  ];
  const shown = readings
    .map(({ ohms }) => ohms)
    .filter((ohms) => ohms >= least / widest && ohms <= most * widest);
  const axis = logAxis(
    Math.min(least, ...shown) / 1.2,
    Math.max(most, ...shown) * 1.2,
    plot,
    (ohms) => quantityText(ohms, 'Ω'),
  );
  const line = (of: (point: (typeof points)[number]) => number) =>
    points.map((point) => ({ x: foot.x(point.temperature), y: axis.y(of(point)) }));
  const placed = placeReadings(
    readings.map(({ temperature, temperatureUncertainty = 0, ohms, uncertainty = 0, ...rest }) => ({
      outcome: rest.outcome,
      at: temperature,
      atUncertainty: temperatureUncertainty,
      value: ohms,
      uncertainty,
    })),
    plot,
    foot.x,
    axis.y,
    points.at(-1)!.high > points[0]!.high,
    0,
  );
  const at = (temperature: number) => signedText(temperature, 4, '°C');
  const value = (ohms: number) =>
    ohms === Infinity ? drawingWords.noConnection : quantityText(ohms, 'Ω');
  const [first, last] = [points[0]!, points.at(-1)!];
  const middle = ({ low, high, nominal = Math.sqrt(low * high) }: (typeof points)[number]) =>
    value(nominal);
  return (
    <BandPicture
      id={id}
      kind="thermistor-drawing"
      title={drawingWords.thermistorBand}
      description={bandSentence({
        from: at(first.temperature),
        to: at(last.temperature),
        first: middle(first),
        last: middle(last),
        readings: readings.map(({ temperature, ohms, outcome: came }) => ({
          at: at(temperature),
          value: value(ohms),
          outcome: came,
        })),
      })}
      width={Math.floor(width)}
      height={plot.height}
      plot={plot}
      upTicks={axis.ticks}
      acrossTicks={foot.ticks}
      up={drawingWords.resistance}
      across={`${drawingWords.temperature}, °C`}
      legend={entries}
      low={line(({ low }) => low)}
      nominal={hasNominal ? line(({ nominal = 1 }) => nominal) : []}
      high={line(({ high }) => high)}
      readings={placed}
    />
  );
}
