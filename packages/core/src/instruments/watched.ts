import { checkSweep } from '../capture/checkSweep.js';
import { inOrder } from '../capture/inOrder.js';
import type { Sweep, SweepLike } from '../capture/sweep.js';
import { checkInstrument } from './checkInstrument.js';
import type { Instrument } from './instrument.js';

/** Refuses what is no instrument and no sweep; the sweep in the order of its times. */
export function watched(
  instrument: Instrument,
  sweep: SweepLike,
  wanted: readonly Instrument['kind'][],
): Sweep {
  checkInstrument(instrument, wanted);
  return inOrder(checkSweep(sweep)).sweep;
}
