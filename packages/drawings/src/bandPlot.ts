import { ticks } from 'd3-array';
import { linearScale } from './linearScale.js';
import type { Plot } from './plot.js';
import { signedNumber } from './signedNumber.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';

/** The width of a drawing that is told none: a phone's. */
export const usualBandWidth = 384;

/** Where the axes of a band's drawing stand, below its legend. */
export function bandPlot(
  width: number,
  left: number,
  top: number,
): Plot & { readonly height: number } {
  const height = Math.round(Math.min(420, 250 + width / 5)) + top;
  return { left, right: Math.floor(width) - 12, top, bottom: height - 44, height };
}

/** The axis along the foot of a band: where a value lies, and ticks as its width takes them. */
export function bandFoot(
  low: number,
  high: number,
  plot: Plot,
  divisor = 1,
): { readonly x: (value: number) => number; readonly ticks: readonly Tick[] } {
  const scale = linearScale([low, high], [plot.left, plot.right]);
  const x = (value: number) => toHundredths(scale(value));
  const count = Math.max(3, Math.round((plot.right - plot.left) / 70));
  return {
    x,
    ticks: ticks(low / divisor, high / divisor, count).map((at) => ({
      at: x(at * divisor),
      text: signedNumber(at),
    })),
  };
}
