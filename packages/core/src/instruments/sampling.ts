import type { Seconds, Volts } from '../units.js';
import type { Logger, Oscilloscope } from './instrument.js';

/** Stamps nearer than this are one, s: slopes between them would overflow. */
export const leastStep: Seconds = 1e-15;

/** The interval between an instrument's samples, s: an oscilloscope takes what its memory holds in a record. */
export function intervalOf(instrument: Oscilloscope | Logger): Seconds {
  return instrument.kind === 'logger'
    ? instrument.interval
    : Math.max(instrument.record / instrument.memory, instrument.fastest);
}

/** The time constant before its converter, s; 0 where none was told. */
export function poleOf(instrument: Oscilloscope | Logger): Seconds {
  if (instrument.kind === 'logger') return instrument.filter ?? 0;
  return instrument.bandwidth === undefined ? 0 : 1 / (2 * Math.PI * instrument.bandwidth);
}

/** The step of its converter, V. */
export function stepOf({ range, bits }: Oscilloscope | Logger): Volts {
  return (range.high - range.low) / 2 ** bits;
}
