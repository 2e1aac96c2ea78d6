import { dirname, join } from 'node:path';
import { type HeldStep, InputError } from '@truesweep/core';
import {
  type AnyJob,
  isSweepJob,
  type JudgedReadings,
  judgeReadings,
  type PortReading,
  type ReadingsJob,
  readJobPieces,
  readPumpDown,
} from '@truesweep/jobs';
import { inFile } from './inFile.js';
import type { InputBounds } from './inputBounds.js';
import { inputPieces } from './inputPieces.js';

/** A job's single readings, judged. */
export interface JudgedJob {
  readonly title: string;
  readonly sensor: string;
  readonly judged: JudgedReadings;
  /** The held steps of recorded pump-downs, by their files; empty where there are none. */
  readonly pumpDowns: readonly { readonly file: string; readonly steps: readonly HeldStep[] }[];
}

/** Judges a job's readings with the steps of its recorded pump-downs. */
export async function judgedJob(
  job: ReadingsJob,
  jobPath: string,
  bounds: InputBounds,
): Promise<JudgedJob> {
  const more: PortReading[] = [];
  const pumpDowns: { file: string; steps: readonly HeldStep[] }[] = [];
  const recordings = job.sensor.kind === 'pressure' && 'recordings' in job ? job.recordings : [];
  for (const told of recordings ?? []) {
    const file = join(dirname(jobPath), told.file);
    const { readings, steps } = await inFile(file, async () => {
      const { ports: _, portUncertainty: __, supply: ___, uncertainty: ____, ...how } = told;
      const { sweep } = await readJobPieces(
        inputPieces(file, bounds),
        { ...how, file },
        recorderJob,
      );
      return readPumpDown(sweep, { ...told, file });
    });
    more.push(...readings);
    pumpDowns.push({ file, steps });
  }
  return { title: job.title, sensor: job.sensor.name, judged: judgeReadings(job, more), pumpDowns };
}

/** How a pump-down is read doesn't rest on a hook-up: the least that a reader of recordings asks for. */
const recorderJob = {
  version: 3,
  title: 'pump-down',
  sensor: { kind: 'potentiometer', name: 'none', track: 1000 },
  hookUp: { source: { volts: 5 }, limiter: 0 },
  instrument: { name: 'recorder', inputResistance: 1e7 },
} as const;

/** Refuses a job of sweeps where single readings are asked for. */
export function readingsJobOf(job: AnyJob): ReadingsJob {
  if (!isSweepJob(job)) return job;
  throw new InputError(
    'unexpected',
    'job.sensor.kind',
    'job.sensor.kind is "potentiometer", which is judged by recorded sweeps: use score.',
  );
}
