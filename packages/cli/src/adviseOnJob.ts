import {
  adviseInstruments,
  InputError,
  type InstrumentAdvice,
  parseQuantity,
} from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';

/** What the core advises on a job's hook-up, and the job's title. */
export interface JobAdvice extends InstrumentAdvice {
  readonly title: string;
}

/**
 * Compares the usual instruments on a job's hook-up; the job's own instrument is left out of it.
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
  },
): JobAdvice {
  const { pullDown, pullUp } = job.hookUp;
  const load = { ...(pullDown !== undefined && { pullDown }), ...(pullUp && { pullUp }) };
  const spot = {
    travel: Number(parseQuantity(entries.travel, '%', '--travel')),
    width: Number(parseQuantity(entries.width, '%', '--width')),
    travelTime: parseQuantity(entries.stroke, 's', '--stroke'),
    passes: passesOf(entries.passes),
  };
  return { title: job.title, ...adviseInstruments({ ...jobCircuit(job), load }, spot) };
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
