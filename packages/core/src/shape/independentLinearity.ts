import { checkReadings } from './checkReadings.js';
import { narrowestBand } from './narrowestBand.js';
import { type Linearity, type NotJudged, notJudged, type ShaftReadingsLike } from './shape.js';

/**
 * Independent linearity: the largest deviation from the straight line whose slope and place make it smallest over the
 * actual electrical travel. That is the minimax line and not the one of least squares.
 *
 * Noise widens it: average readings at a place before, as {@link shapeOf} does. Its uncertainty is that of the three
 * readings which hold the line, taken as independent.
 *
 * Source of the term: Bourns, Basic Potentiometer Theory, "Linearity"; State Electronics, glossary. Method:
 * the narrowest band between parallel lines, from the readings' convex hull.
 *
 * @param given Fractions of the voltage across the end terminals, without load, over the electrical travel.
 * @returns Not judged (`no-movement`) where the shaft stood still.
 * @throws InputError for columns of different lengths or a value that is no number.
 *
 * @example
 * const readings = { shaft: Float64Array.of(0, 1, 2, 3), ratio: Float64Array.of(0, 0.4, 0.2, 0.6) };
 * const { value, line } = independentLinearity(readings);
 * value.toFixed(6) // => '0.150000'
 * line.slope.toFixed(6) // => '0.100000'
 */
export function independentLinearity(given: ShaftReadingsLike): Linearity | NotJudged {
  const readings = checkReadings(given);
  const { shaft, ratio, uncertainty } = readings;
  const band = narrowestBand(shaft, ratio);
  if (!band) return notJudged('no-movement');
  return {
    kind: 'judged',
    value: band.deviation,
    at: shaft[band.held[1]]!,
    line: band.line,
    ...(uncertainty !== undefined && { uncertainty: uncertainty * Math.hypot(...band.weights) }),
  };
}
