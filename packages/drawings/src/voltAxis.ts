import { nice, ticks } from 'd3-array';
import { axisUnit } from './axisUnit.js';
import { linearScale } from './linearScale.js';
import { plainNumber } from './plainNumber.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';

/** An axis of volts: where a value lies, its ticks, and the unit that their numbers are in. */
export interface VoltAxis {
  readonly y: (volts: number) => number;
  readonly voltTicks: readonly Tick[];
  readonly voltUnit: string;
}

/** An axis up a plot that holds the values from the lowest to the highest, with about so many ticks. */
export function voltAxis(low: number, high: number, count: number, plot: Plot): VoltAxis {
  // Where all values are one they stand on an axis of 1 V, which is none of theirs.
  const axis = nice(low, high > low ? high : low + 1, count);
  const scale = linearScale(axis, [plot.bottom, plot.top]);
  const unit = axisUnit(Math.max(-axis[0], axis[1]), 'V');
  const y = (volts: number) => toHundredths(scale(volts));
  return {
    y,
    voltTicks: ticks(...axis, count).map((at) => ({
      at: y(at),
      text: plainNumber(at / unit.divisor),
    })),
    voltUnit: unit.name,
  };
}
