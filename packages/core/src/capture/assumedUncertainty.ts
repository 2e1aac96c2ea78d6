import type { Volts } from '../units.js';

/**
 * Where nobody tells what an instrument reads true to, it is taken for one of its kind: an oscilloscope of 8 bits for true to 3 % (twice the
 * standard uncertainty), a meter or logger for true to 1 %. Common practice, no source.
 */
const ofCoarse = 0.015;
const ofFine = 0.005;
/** An instrument whose steps are this part of the source, or larger, resolves no more than 8 bits of its range. */
const coarseStep = 1 / 300;

/** The standard uncertainty of a reading, V, of an instrument of which nothing is told but its resolution. */
export function assumedUncertainty(reading: Volts, resolution: Volts, source: Volts): Volts {
  const part = resolution >= coarseStep * source ? ofCoarse : ofFine;
  return part * Math.abs(reading);
}
