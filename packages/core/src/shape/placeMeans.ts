import { straightLine } from '../statistics/straightLine.js';
import { halfWindowOf, halfWindows, placeScale } from './placeScale.js';
import type { ShaftReadings } from './shape.js';
import { strokesOf } from './strokesOf.js';

/** Mean readings of each half percent of the range on each stroke: noise averages out, both ways stay apart. */
export interface PlaceMeans extends ShaftReadings {
  /** Less the straight line of least squares through all readings. */
  readonly deviation: Float64Array;
  readonly halfWindow: Uint8Array;
  /** 1 for a mean of a stroke on which the shaft's place grew. */
  readonly opening: Uint8Array;
}

/** The shaft turned back where it went this many half windows the other way: 2 % of the range. */
export const turnOfHalfWindows = 4;

/**
 * Means of readings over places and strokes; what is averaged is the deviation from a line, so that uneven movement
 * within a half window costs nothing.
 *
 * @returns Nothing where the shaft stood still.
 */
export function placeMeans(readings: ShaftReadings): PlaceMeans | undefined {
  const { shaft, ratio, uncertainty } = readings;
  const scale = placeScale(shaft);
  const line = straightLine(shaft, ratio);
  if (!line || !(scale.width > 0)) return undefined;
  const means: number[][] = [];
  const counts = new Uint32Array(halfWindows);
  const places = new Float64Array(halfWindows);
  const deviations = new Float64Array(halfWindows);
  for (const { from, to, opening } of strokesOf(shaft, turnOfHalfWindows * scale.width)) {
    for (const sums of [counts, places, deviations]) sums.fill(0);
    for (let i = from; i < to; i++) {
      const bin = halfWindowOf(scale, shaft[i]!);
      counts[bin]!++;
      places[bin]! += shaft[i]! - scale.lowest;
      deviations[bin]! += ratio[i]! - line.intercept - line.slope * shaft[i]!;
    }
    for (let bin = 0; bin < halfWindows; bin++) {
      const count = counts[bin]!;
      if (count === 0) continue;
      const [place, deviation] = [scale.lowest + places[bin]! / count, deviations[bin]! / count];
      const mean = line.intercept + line.slope * place + deviation;
      means.push([place, mean, deviation, bin, Number(opening)]);
    }
  }
  const of = (field: number): number[] => means.map((mean) => mean[field]!);
  return {
    shaft: Float64Array.from(of(0)),
    ratio: Float64Array.from(of(1)),
    deviation: Float64Array.from(of(2)),
    halfWindow: Uint8Array.from(of(3)),
    opening: Uint8Array.from(of(4)),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}
