import type { Load } from '../circuit/circuit.js';
import type { Ohms } from '../units.js';
import type { Instrument } from './instrument.js';

/** The resistance of an instrument's input, Ω; ∞ for a control unit without a pull-down. */
export function inputOhms(instrument: Instrument): Ohms {
  if (instrument.kind === 'needle-meter') return instrument.ohmsPerVolt * instrument.range;
  if (instrument.kind === 'control-unit') return instrument.pullDown ?? Number.POSITIVE_INFINITY;
  return instrument.inputOhms;
}

/** A load with the instrument added: its input in parallel with the pull-down, a control unit's pull-up where there was none. */
export function withInstrument(load: Load, instrument: Instrument): Load {
  const ohms = inputOhms(instrument);
  const pullDown = load.pullDown === undefined ? ohms : 1 / (1 / load.pullDown + 1 / ohms);
  const pullUp =
    load.pullUp ?? (instrument.kind === 'control-unit' ? instrument.pullUp : undefined);
  const { pullDown: _, pullUp: __, ...rest } = load;
  return {
    ...rest,
    ...(Number.isFinite(pullDown) && { pullDown }),
    ...(pullUp && { pullUp }),
  };
}
