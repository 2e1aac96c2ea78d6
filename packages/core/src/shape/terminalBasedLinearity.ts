import { checkReadings } from './checkReadings.js';
import { endReadings } from './endReadings.js';
import { largestFromLine } from './largestFromLine.js';
import { type Linearity, type NotJudged, notJudged, type ShaftReadingsLike } from './shape.js';

/** Less than this is no turn of a shaft: quotients by it would overflow. */
const leastTravel = 1e-100;

/**
 * Terminal-based linearity: the largest deviation from the straight line through the readings at both ends of the
 * travel.
 *
 * Its uncertainty is that of the reading and of the two end readings, taken as independent.
 *
 * Source of the term: Bourns, Basic Potentiometer Theory, "Linearity".
 *
 * @param given As for {@link independentLinearity}.
 * @returns Not judged (`no-movement`) where the shaft stood still.
 * @throws InputError for columns of different lengths or a value that is no number.
 *
 * @example
 * const readings = { shaft: Float64Array.of(0, 45, 90), ratio: Float64Array.of(0.1, 0.55, 0.9) };
 * const { value, at } = terminalBasedLinearity(readings);
 * value.toFixed(6) // => '0.050000'
 * at // => 45
 */
export function terminalBasedLinearity(given: ShaftReadingsLike): Linearity | NotJudged {
  const readings = checkReadings(given);
  const { shaft, ratio, uncertainty } = readings;
  const [first, last] = endReadings(shaft);
  const travel = shaft[last]! - shaft[first]!;
  if (!(Math.abs(travel) > leastTravel)) return notJudged('no-movement');
  const slope = (ratio[last]! - ratio[first]!) / travel;
  const line = { intercept: ratio[first]! - slope * shaft[first]!, slope };
  const { index, value } = largestFromLine(readings, line)!;
  const at = shaft[index]!;
  const share = (at - shaft[first]!) / travel;
  return {
    kind: 'judged',
    value,
    at,
    line,
    ...(uncertainty !== undefined && {
      uncertainty: uncertainty * Math.hypot(1, share, 1 - share),
    }),
  };
}
