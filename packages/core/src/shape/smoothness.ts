import { checkFields } from '../fields.js';
import { between } from '../guard.js';
import { checkReadings } from './checkReadings.js';
import { turnOfHalfWindows } from './placeMeans.js';
import { halfWindowOf, halfWindows, placeScale } from './placeScale.js';
import {
  type NotJudged,
  notJudged,
  type ReferenceLine,
  type ShaftReadingsLike,
  type ShapeError,
} from './shape.js';
import { strokesOf } from './strokesOf.js';

const lineRules = { intercept: between(-1e12, 1e12), slope: between(-1e30, 1e30) };

/** A cycle passes this part of the travel at least (Bourns, Basic Potentiometer Theory, "Useful terms": "cycle"). */
const seenOfRange = 0.9;

/**
 * Smoothness: how far the deviation from the line swings, top to bottom, within any window of 1 % of the range on one
 * stroke; neighbouring windows overlap by half.
 *
 * Every reading counts, so that noise widens it. Its uncertainty is that of two readings, taken as independent.
 *
 * Source of the window: Novotechnik, definitions, 7.2 (window 1 % of the electrical range, windows overlapping by 50 %
 * or more, in percent of the applied voltage).
 *
 * @param given As for {@link independentLinearity}, in the order in which they were taken.
 * @param line The line that the readings should follow.
 * @returns `at` is the window's middle. Not judged where the shaft stood still (`no-movement`) or where windows with
 * two readings or more cover less than nine tenths of the range (`too-few-readings`).
 * @throws InputError for columns of different lengths or a value that is no number.
 *
 * @example
 * const shaft = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);
 * const ratio = shaft.map((at) => (at === 0.5 ? 0.504 : at));
 * const { value } = smoothness({ shaft, ratio }, { intercept: 0, slope: 1 });
 * value.toFixed(6) // => '0.004000'
 */
export function smoothness(given: ShaftReadingsLike, line: ReferenceLine): ShapeError | NotJudged {
  const readings = checkReadings(given);
  checkFields(line, 'line', lineRules);
  const { shaft, ratio, uncertainty } = readings;
  const scale = placeScale(shaft);
  if (!(scale.width > 0)) return notJudged('no-movement');
  const counts = new Uint32Array(halfWindows);
  const lows = new Float64Array(halfWindows);
  const highs = new Float64Array(halfWindows);
  const seen = new Uint8Array(halfWindows);
  let [value, widest] = [-1, 0];
  for (const { from, to } of strokesOf(shaft, turnOfHalfWindows * scale.width)) {
    counts.fill(0);
    lows.fill(Infinity);
    highs.fill(-Infinity);
    for (let i = from; i < to; i++) {
      const bin = halfWindowOf(scale, shaft[i]!);
      const deviation = ratio[i]! - line.intercept - line.slope * shaft[i]!;
      counts[bin]!++;
      if (deviation < lows[bin]!) lows[bin] = deviation;
      if (deviation > highs[bin]!) highs[bin] = deviation;
    }
    for (let bin = 1; bin < halfWindows; bin++) {
      if (counts[bin - 1]! + counts[bin]! < 2) continue;
      seen[bin] = 1;
      const swing = Math.max(highs[bin - 1]!, highs[bin]!) - Math.min(lows[bin - 1]!, lows[bin]!);
      if (swing > value) [value, widest] = [swing, bin];
    }
  }
  const windows = seen.reduce((sum, one) => sum + one, 0);
  if (windows < seenOfRange * (halfWindows - 1)) return notJudged('too-few-readings');
  return {
    kind: 'judged',
    value,
    at: scale.lowest + widest * scale.width,
    ...(uncertainty !== undefined && { uncertainty: Math.SQRT2 * uncertainty }),
  };
}
