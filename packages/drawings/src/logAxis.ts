import { ticks } from 'd3-array';
import { linearScale } from './linearScale.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';

/** Where a value above 0 lies on an axis of logarithms up a plot, and its ticks. */
export interface LogAxis {
  readonly y: (value: number) => number;
  readonly ticks: readonly Tick[];
}

/**
 * An axis of logarithms from the lowest to the highest value.
 *
 * @param text How a tick's number is written, with its unit.
 */
export function logAxis(
  low: number,
  high: number,
  plot: Plot,
  text: (value: number) => string,
): LogAxis {
  const scale = linearScale([Math.log(low), Math.log(high)], [plot.bottom, plot.top]);
  const y = (value: number) => toHundredths(scale(Math.log(value)));
  return { y, ticks: tickValues(low, high).map((value) => ({ at: y(value), text: text(value) })) };
}

/** Powers of ten, with 2 and 5 between them where there are few; round values where there is no power. */
function tickValues(low: number, high: number): readonly number[] {
  const decades = Math.log10(high / low);
  if (decades < 1) return ticks(low, high, 4);
  const between = decades < 3 ? [1, 2, 5] : [1];
  const first = Math.floor(Math.log10(low));
  return Array.from({ length: Math.ceil(decades) + 2 }, (_, i) => first + i)
    .flatMap((power) => between.map((times) => times * 10 ** power))
    .filter((value) => value >= low && value <= high);
}
