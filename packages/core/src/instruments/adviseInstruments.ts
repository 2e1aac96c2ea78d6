import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { checkFields, listOf } from '../fields.js';
import { between } from '../guard.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import type { Seconds } from '../units.js';
import { chooseSetting, type Setting } from './chooseSetting.js';
import { digitalDisplay } from './digitalDisplay.js';
import { exampleInstruments } from './exampleInstruments.js';
import { withInstrument } from './inputLoad.js';
import type { DigitalMeter, Instrument } from './instrument.js';
import {
  anInstrument,
  type RankedInstrument,
  rankInstruments,
  type SoughtDropout,
  spotRules,
} from './rankInstruments.js';
import { type StepByStep, stepByStep } from './stepByStep.js';

/** Which instruments would show a worn spot on a hook-up, how to set one, and what to do with a meter alone. */
export interface InstrumentAdvice {
  /** The worn spot and the sweep over it that all of this is about. */
  readonly sought: SoughtDropout;
  /** Best first. */
  readonly ranked: readonly RankedInstrument[];
  /** How to set an oscilloscope or a logger for it. */
  readonly setting: Setting;
  /** The way with the first digital meter among the instruments; left out where there is none, like the next. */
  readonly meterOnly?: StepByStep;
  /** What that meter shows over one stroke past the spot, one text after the other; left out where there is none. */
  readonly digits?: readonly string[];
}

/** A worn spot that is looked for by hand. */
export type SoughtByHand = Omit<SoughtDropout, 'speed'> & {
  /** How long the hand takes from stop to stop, s. */
  readonly travelTime: Seconds;
};

/**
 * Answers "which instrument?" for a worn spot on a hook-up: ranks the instruments, chooses a setting that shows the spot surely, and says what a digital
 * meter alone can do and what it would show meanwhile.
 *
 * @param circuit The hook-up without an instrument.
 * @param instruments The usual ones when left out.
 * @throws InputError for a wrong circuit, spot or instrument.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 1e6 } };
 * const { ranked, digits } = adviseInstruments(circuit, { travel: 0.3, width: 0.01, travelTime: 2, passes: 3 });
 * ranked[0].reason // => 'surely'
 * ranked[ranked.length - 1].kind // => 'digital-meter'
 * digits.length // => 9
 */
export function adviseInstruments(
  circuit: Circuit,
  wanted: SoughtByHand,
  instruments: readonly Instrument[] = exampleInstruments,
): InstrumentAdvice {
  checkCircuit(circuit);
  checkFields(wanted, 'wanted', spotRules({ travelTime: between(1e-6, 1e6, 's') }));
  listOf(anInstrument, 0, 1000)(instruments, 'instruments');
  const { travelTime, ...spot } = wanted;
  const sought = { ...spot, speed: 1 / travelTime };
  const meter = instruments.find((one) => one.kind === 'digital-meter');
  const { pullDown, pullUp } = circuit.load;
  return {
    sought,
    ranked: rankInstruments(instruments, circuit, sought),
    setting: chooseSetting(circuit, { width: spot.width, travelTime }),
    ...(meter && {
      meterOnly: stepByStep(meter, spot.width, pullDown !== undefined || pullUp !== undefined),
      digits: digitsOf(meter, circuit, { ...spot, travelTime }),
    }),
  };
}

/** The digits over a stroke with a rest before and after it. */
function digitsOf(
  meter: DigitalMeter,
  circuit: Circuit,
  { travel, width, travelTime }: SoughtByHand,
): readonly string[] {
  const { sweep } = simulateSweep({
    circuit: { ...circuit, load: withInstrument(circuit.load, meter) },
    movements: [
      { kind: 'hold', seconds: 1 },
      { kind: 'turn', to: 1, seconds: travelTime },
      { kind: 'hold', seconds: 1 },
    ],
    recorder: { interval: Math.max(1e-3, travelTime / 1e5) },
    faults: [{ kind: 'worn-spot', travel, width, ohms: lifted }],
    seed: 1,
  });
  return digitalDisplay(meter, sweep).shown.map(({ text }) => text);
}

/** The resistance of a lifted contact, Ω. */
const lifted = 1e12;
