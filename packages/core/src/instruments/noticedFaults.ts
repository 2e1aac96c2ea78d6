import type { SweepLike } from '../capture/sweep.js';
import { noMoreThan } from '../noMoreThan.js';
import type { Seconds } from '../units.js';
import type { ControlUnit } from './instrument.js';
import { roundedByPole } from './roundedByPole.js';
import { watched } from './watched.js';

/** As many readings of one sweep are worked out: a day of a hundred in a second, and some more. */
const mostReadings = 1e7;

/** A fault that a control unit set. */
export interface NoticedFault {
  /** When its debounce time had passed, s. */
  readonly time: Seconds;
  /** Whether readings stood below the lower limit or above the higher one. */
  readonly kind: 'low' | 'high';
}

/**
 * The faults that a control unit would set while it reads a sweep: readings below or above its limits for its debounce time without one
 * between. One that lasts is set once.
 *
 * @throws InputError for what no sweep and no control unit can be.
 *
 * @example
 * const unit = { kind: 'control-unit', name: 'unit', pullDown: 47e3, interval: 0.01, limits: { low: 0.2, high: 4.8 }, debounce: 0.05 } as const;
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const sweep = { time, signal: time.map((t) => (t > 0.3 ? 0.1 : 2)) };
 * noticedFaults(unit, sweep).map(({ time, kind }) => `${kind} ${time.toFixed(2)}`) // => ['low 0.36']
 */
export function noticedFaults(unit: ControlUnit, given: SweepLike): readonly NoticedFault[] {
  const sweep = watched(unit, given, ['control-unit']);
  const { interval, limits, debounce, filter = 0 } = unit;
  const signal = roundedByPole(sweep, filter);
  const { time } = sweep;
  const found: NoticedFault[] = [];
  let [since, isSet] = [Number.NaN, false];
  let state: 'low' | 'high' | undefined;
  let before = 0;
  const count = Math.floor((time.at(-1)! - time[0]!) / interval + 1e-9);
  noMoreThan(mostReadings, count, 'instrument.interval', 'readings of this sweep');
  for (let i = 0; i <= count; i++) {
    const at = time[0]! + i * interval;
    // The reading stands for the sample before it; half an interval's rounding is no sample's difference.
    while (before < time.length - 1 && time[before + 1]! <= at + 1e-9 * interval) before += 1;
    const volts = signal[before]!;
    const next = volts < limits.low ? 'low' : volts > limits.high ? 'high' : undefined;
    if (next !== state) [state, since, isSet] = [next, at, false];
    if (!state || isSet || at - since < debounce * (1 - 1e-9)) continue;
    found.push({ time: at, kind: state });
    isSet = true;
  }
  return found;
}
