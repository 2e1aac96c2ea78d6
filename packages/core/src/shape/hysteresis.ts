import { meanAndDeviation } from '../statistics/meanAndDeviation.js';
import { checkReadings } from './checkReadings.js';
import { type PlaceMeans, placeMeans } from './placeMeans.js';
import { type NotJudged, notJudged, type ShaftReadingsLike, type ShapeError } from './shape.js';

/**
 * Hysteresis: the largest difference between the readings of the strokes one way and the other at the same place, each the
 * mean over half a percent of the range and over its strokes.
 *
 * Its uncertainty is of type A, from the scatter between strokes, where that place was passed twice or more each way;
 * otherwise √2 times that of a reading.
 *
 * @param given As for {@link independentLinearity}, in the order in which they were taken.
 * @returns Not judged where the shaft stood still (`no-movement`) or passed no place both ways (`one-way`).
 * @throws InputError for columns of different lengths or a value that is no number.
 *
 * @example
 * const readings = {
 *   shaft: Float64Array.of(0, 0.5, 1, 0.5, 0),
 *   ratio: Float64Array.of(0, 0.5, 1, 0.52, 0),
 * };
 * hysteresis(readings).value.toFixed(6) // => '0.020000'
 */
export function hysteresis(given: ShaftReadingsLike): ShapeError | NotJudged {
  const means = placeMeans(checkReadings(given));
  return means ? hysteresisOf(means) : notJudged('no-movement');
}

/** As {@link hysteresis}, from means already made. */
export function hysteresisOf(means: PlaceMeans): ShapeError | NotJudged {
  const { shaft, deviation, halfWindow, opening, uncertainty } = means;
  const ways: { at: number; both: [closing: number[], opening: number[]] }[] = [];
  halfWindow.forEach((bin, i) => {
    ways[bin] ??= { at: shaft[i]!, both: [[], []] };
    ways[bin].both[opening[i] ? 1 : 0].push(deviation[i]!);
  });
  let largest: ShapeError | NotJudged = notJudged('one-way');
  for (const { at, both } of ways.filter(({ both }) => both.every((way) => way.length > 0))) {
    const [closed, opened] = [meanAndDeviation(both[0]), meanAndDeviation(both[1])];
    const value = Math.abs(closed.mean - opened.mean);
    if (largest.kind === 'judged' && value <= largest.value) continue;
    const [closings, openings] = [both[0].length, both[1].length];
    const u =
      Math.min(closings, openings) > 1
        ? Math.hypot(closed.deviation / Math.sqrt(closings), opened.deviation / Math.sqrt(openings))
        : uncertainty && Math.SQRT2 * uncertainty;
    largest = { kind: 'judged', value, at, ...(u !== undefined && { uncertainty: u }) };
  }
  return largest;
}
