import { loadRules } from '../circuit/checkCircuit.js';
import type { Load } from '../circuit/circuit.js';
import { inParallel } from '../circuit/inParallel.js';
import { checkFields } from '../fields.js';
import type { Ohms } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import type { Instrument } from './instrument.js';

/**
 * The resistance of an instrument's input, Ω: of a needle its sensitivity times its range; ∞ for a control unit without a pull-down.
 *
 * @example
 * inputOhms({ kind: 'needle-meter', name: 'needle', ohmsPerVolt: 20e3, range: 10 }) // => 200000
 */
export function inputOhms(instrument: Instrument): Ohms {
  checkInstrument(instrument);
  if (instrument.kind === 'needle-meter') return instrument.ohmsPerVolt * instrument.range;
  if (instrument.kind === 'control-unit') return instrument.pullDown ?? Number.POSITIVE_INFINITY;
  return instrument.inputOhms;
}

/**
 * A load with the instrument added: its input in parallel with the pull-down, a control unit's pull-up where there was none.
 *
 * @example
 * const needle = { kind: 'needle-meter', name: 'needle', ohmsPerVolt: 20e3, range: 10 } as const;
 * withInstrument({ pullDown: 200e3 }, needle) // => { pullDown: 100000 }
 */
export function withInstrument(load: Load, instrument: Instrument): Load {
  checkFields(load, 'load', loadRules);
  const ohms = inputOhms(instrument);
  const pullDown = inParallel(load.pullDown, ohms);
  const pullUp =
    load.pullUp ?? (instrument.kind === 'control-unit' ? instrument.pullUp : undefined);
  const { pullDown: _, pullUp: __, ...rest } = load;
  return {
    ...rest,
    ...(Number.isFinite(pullDown) && { pullDown }),
    ...(pullUp && { pullUp }),
  };
}
