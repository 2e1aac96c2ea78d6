import {
  type Circuit,
  chooseSetting,
  type DigitalMeter,
  digitalDisplay,
  exampleInstruments,
  InputError,
  parseQuantity,
  type RankedInstrument,
  rankInstruments,
  type Setting,
  type SoughtDropout,
  type StepByStep,
  simulateSweep,
  stepByStep,
  withInstrument,
} from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';

/** Which instruments would show a worn spot on a hook-up, how to set one, and what to do with a meter alone. */
export interface InstrumentAdvice {
  readonly title: string;
  readonly sought: SoughtDropout;
  /** Best first. */
  readonly ranked: readonly RankedInstrument[];
  readonly setting: Setting;
  readonly meterOnly: StepByStep;
  /** What the digital meter shows over one stroke past the spot, one text after the other. */
  readonly digits: readonly string[];
}

/**
 * Compares the usual instruments on a job's hook-up; the job's own instrument is left out of it.
 *
 * @throws InputError for what is no such quantity.
 */
export function adviseInstruments(
  job: Job,
  entries: {
    readonly travel: string;
    readonly width: string;
    readonly stroke: string;
    readonly passes: string;
  },
): InstrumentAdvice {
  const { pullDown, pullUp } = job.hookUp;
  const load = { ...(pullDown !== undefined && { pullDown }), ...(pullUp && { pullUp }) };
  const circuit = { ...jobCircuit(job), load };
  const travel = Number(parseQuantity(entries.travel, '%', '--travel'));
  const width = Number(parseQuantity(entries.width, '%', '--width'));
  const travelTime = parseQuantity(entries.stroke, 's', '--stroke');
  const sought = { travel, width, speed: 1 / travelTime, passes: passesOf(entries.passes) };
  const meter = exampleMeter();
  return {
    title: job.title,
    sought,
    ranked: rankInstruments(exampleInstruments, circuit, sought),
    setting: chooseSetting(circuit, { width, travelTime }),
    meterOnly: stepByStep(meter, width, pullDown !== undefined || pullUp !== undefined),
    digits: digitsOf(meter, circuit, { travel, width, travelTime }),
  };
}

/** The digits over a stroke with a rest before and after it. */
function digitsOf(
  meter: DigitalMeter,
  circuit: Circuit,
  { travel, width, travelTime }: { travel: number; width: number; travelTime: number },
): readonly string[] {
  const { sweep } = simulateSweep({
    circuit: { ...circuit, load: withInstrument(circuit.load, meter) },
    movements: [
      { kind: 'hold', seconds: 1 },
      { kind: 'turn', to: 1, seconds: travelTime },
      { kind: 'hold', seconds: 1 },
    ],
    recorder: { interval: Math.max(1e-3, travelTime / 1e5) },
    faults: [{ kind: 'worn-spot', travel, width, ohms: 1e12 }],
    seed: 1,
  });
  return digitalDisplay(meter, sweep).shown.map(({ text }) => text);
}

function exampleMeter(): DigitalMeter {
  const meter = exampleInstruments.find((one) => one.kind === 'digital-meter');
  if (meter?.kind !== 'digital-meter')
    throw new Error('there is a digital meter among the examples');
  return meter;
}

function passesOf(text: string): number {
  const passes = Number(text);
  if (Number.isInteger(passes) && passes >= 1 && passes <= 1000) return passes;
  throw new InputError(
    'not-a-number',
    '--passes',
    `--passes is ${JSON.stringify(text)}; it must be a whole number from 1 to 1000.`,
  );
}
