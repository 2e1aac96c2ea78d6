import {
  type DigitalMeter,
  digitalDisplay,
  exampleInstruments,
  type Instrument,
  type Logger,
  type NeedleMeter,
  needleDisplay,
  type Seconds,
  type ShownDigits,
  type Sweep,
  sampledDisplay,
  simulateSweep,
  type Volts,
  withInstrument,
} from '@truesweep/core';
import { workElsewhere } from '../forms/workElsewhere.js';
import {
  ownRecorder,
  type SoughtValues,
  soughtCircuit,
  whichInstrument,
} from './whichInstrument.js';

/** What a digital meter, a needle and a logger show of one stroke past a worn spot, each with its own load on the wiper. */
export interface Displays {
  readonly seconds: Seconds;
  readonly digits: { readonly name: string; readonly shown: readonly ShownDigits[] };
  readonly needle: {
    readonly name: string;
    readonly range: Volts;
    readonly time: Float64Array;
    readonly volts: Float64Array;
  };
  readonly trace: {
    readonly name: string;
    readonly range: Volts;
    readonly time: Float64Array;
    readonly volts: Float64Array;
  };
}

/** Before and after the stroke the hand rests so long, s. */
const rest: Seconds = 1;
/** The resistance of a lifted contact, Ω. */
const lifted = 1e12;

/** Simulates the stroke once for each instrument. */
function displaysOf(values: SoughtValues): Displays {
  const meter = usual('digital-meter') as DigitalMeter;
  const needle = usual('needle-meter') as NeedleMeter;
  const logger = ownRecorder(values) ?? (usual('logger') as Logger);
  const [onMeter, onNeedle, onLogger] = [meter, needle, logger].map((one) =>
    watched(values, one),
  ) as [Sweep, Sweep, Sweep];
  const drawn = sampledDisplay(logger, onLogger);
  return {
    seconds: 2 * rest + values.stroke,
    digits: { name: meter.name, shown: digitalDisplay(meter, onMeter).shown },
    needle: {
      name: needle.name,
      range: needle.range,
      time: onNeedle.time,
      volts: needleDisplay(needle, onNeedle),
    },
    trace: {
      name: logger.name,
      range: values.source,
      time: drawn.time,
      volts: drawn.low,
    },
  };
}

function usual(kind: Instrument['kind']): Instrument | undefined {
  return exampleInstruments.find((one) => one.kind === kind);
}

/** The stroke as it is with an instrument at the wiper. */
function watched(values: SoughtValues, instrument: Instrument): Sweep {
  const { travel, width, stroke } = values;
  const circuit = soughtCircuit(values);
  return simulateSweep({
    circuit: { ...circuit, load: withInstrument(circuit.load, instrument) },
    movements: [
      { kind: 'hold', seconds: rest },
      { kind: 'turn', to: 1, seconds: stroke },
      { kind: 'hold', seconds: rest },
    ],
    recorder: { interval: Math.max(1e-3, stroke / 2e4) },
    faults: [{ kind: 'worn-spot', travel, width, ohms: lifted }],
    seed: 1,
  }).sweep;
}

/** What the core advises, and what instruments show meanwhile. */
export function adviceAndDisplays(values: SoughtValues) {
  return { advice: whichInstrument(values), displays: displaysOf(values) };
}

/** The same in a worker: the stroke is simulated for each instrument. */
export const askAdvice = workElsewhere('which-instrument', import.meta.url, adviceAndDisplays);
