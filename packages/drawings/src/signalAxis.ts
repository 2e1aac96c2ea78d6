import { bandWords, drawingWords } from '@truesweep/wording';
import { nice, ticks } from 'd3-array';
import type { Plot } from './plot.js';
import { quantityText } from './quantityText.js';
import { signedNumber, signedText } from './signedNumber.js';
import type { Tick } from './tick.js';
import { voltAxis } from './voltAxis.js';

/** An axis of a signal, in volts or as a ratio to its supply: where a value lies, its ticks, and its name with the unit. */
export interface SignalAxis {
  readonly y: (value: number) => number;
  readonly ticks: readonly Tick[];
  readonly name: string;
}

/** An axis that holds zero and every value. */
export function signalAxis(values: readonly number[], unit: 'V' | '1', plot: Plot): SignalAxis {
  let [low, high] = [0, 0];
  for (const value of values) [low, high] = [Math.min(low, value), Math.max(high, value)];
  const { y, voltTicks, voltUnit } = voltAxis(low, high, 5, plot);
  return unit === 'V'
    ? { y, ticks: voltTicks, name: `${drawingWords.reading}, ${voltUnit}` }
    : {
        y,
        ticks: ticks(...nice(low, high > low ? high : 1, 5), 5).map((at) => ({
          at: y(at),
          text: signedNumber(at),
        })),
        name: bandWords.ratio,
      };
}

/** A signal as it is said: with its unit, or as the plain number that a ratio is. */
export function signalText(value: number, unit: 'V' | '1'): string {
  return unit === 'V' ? quantityText(value, 'V') : signedText(value, 3, '');
}
