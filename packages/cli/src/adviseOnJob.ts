import {
  adviseInstruments,
  type Circuit,
  chooseSetting,
  exampleInstruments,
  InputError,
  type InstrumentAdvice,
  parseQuantity,
} from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';
import { ownInstrument } from './ownInstrument.js';

/** What the core advises on a job's hook-up, and the job's title. */
export interface JobAdvice extends InstrumentAdvice {
  readonly title: string;
  /** The job's own instrument, which is among those ranked; how often it samples, s, and whether that was told. */
  readonly own: { readonly name: string; readonly interval: number; readonly isTold: boolean };
}

/**
 * Compares the usual instruments and the job's own on its hook-up. Where nothing tells how often its own samples, that is taken for the slowest that shows
 * the spot surely.
 *
 * @throws InputError for what is no such quantity.
 */
export function adviseOnJob(
  job: Job,
  entries: {
    readonly travel: string;
    readonly width: string;
    readonly stroke: string;
    readonly passes: string;
    readonly every?: string;
  },
): JobAdvice {
  const spot = {
    travel: Number(parseQuantity(entries.travel, '%', '--travel')),
    width: Number(parseQuantity(entries.width, '%', '--width')),
    travelTime: parseQuantity(entries.stroke, 's', '--stroke'),
    passes: passesOf(entries.passes),
  };
  const circuit = circuitWithoutInstrument(job);
  const told =
    entries.every === undefined
      ? job.instrument.sampledEvery
      : parseQuantity(entries.every, 's', '--every');
  const interval =
    told ?? chooseSetting(circuit, { width: spot.width, travelTime: spot.travelTime }).interval;
  const own = ownInstrument(job, interval);
  return {
    title: job.title,
    own: { name: own.name, interval, isTold: told !== undefined },
    ...adviseInstruments(circuit, spot, [...exampleInstruments, own]),
  };
}

/** The job's hook-up with its own loads alone. */
export function circuitWithoutInstrument(job: Job): Circuit {
  const { pullDown, pullUp } = job.hookUp;
  const load = { ...(pullDown !== undefined && { pullDown }), ...(pullUp && { pullUp }) };
  return { ...jobCircuit(job), load };
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
