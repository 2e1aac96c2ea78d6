import { checkReadings } from './checkReadings.js';
import { endReadings } from './endReadings.js';
import { narrowestBand } from './narrowestBand.js';
import { type Linearity, type NotJudged, notJudged, type ShaftReadingsLike } from './shape.js';

/**
 * Zero-based linearity: the largest deviation from the straight line through the zero end whose slope makes it smallest.
 * The zero end is the reading at the end of the travel where the output is lower.
 *
 * Its uncertainty is that of the readings which hold the line, the zero end among them, taken as independent.
 *
 * Source of the term: Bourns, Basic Potentiometer Theory, "Linearity". Method: {@link independentLinearity} of the
 * readings about the zero end together with their mirror images through it, whose best line passes through it.
 *
 * @param given As for {@link independentLinearity}.
 * @returns Not judged (`no-movement`) where the shaft stood still.
 * @throws InputError for columns of different lengths or a value that is no number.
 *
 * @example
 * const readings = { shaft: Float64Array.of(0, 1, 2), ratio: Float64Array.of(0, 0.6, 0.9) };
 * const { value, line } = zeroBasedLinearity(readings);
 * value.toFixed(6) // => '0.100000'
 * line.slope.toFixed(6) // => '0.500000'
 */
export function zeroBasedLinearity(given: ShaftReadingsLike): Linearity | NotJudged {
  const readings = checkReadings(given);
  const { shaft, ratio, uncertainty } = readings;
  const [first, last] = endReadings(shaft);
  const zero = ratio[first]! <= ratio[last]! ? first : last;
  const count = shaft.length;
  const x = new Float64Array(2 * count);
  const y = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) {
    x[i] = shaft[i]! - shaft[zero]!;
    y[i] = ratio[i]! - ratio[zero]!;
    x[count + i] = -x[i]!;
    y[count + i] = -y[i]!;
  }
  const band = narrowestBand(x, y);
  if (!band) return notJudged('no-movement');
  const weights = new Map([[zero, 0]]);
  band.held.forEach((held, i) => {
    const weight = held < count ? band.weights[i]! : -band.weights[i]!;
    weights.set(held % count, (weights.get(held % count) ?? 0) + weight);
    weights.set(zero, weights.get(zero)! - weight);
  });
  const { slope } = band.line;
  return {
    kind: 'judged',
    value: band.deviation,
    at: shaft[band.held[1] % count]!,
    line: { intercept: ratio[zero]! - slope * shaft[zero]!, slope },
    ...(uncertainty !== undefined && {
      uncertainty: uncertainty * Math.hypot(...weights.values()),
    }),
  };
}
