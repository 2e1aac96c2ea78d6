import { dirname, join } from 'node:path';
import {
  type HeldStep,
  InputError,
  leakByDrift,
  type Seconds,
  type Sweep,
  type SwitchBounce,
  switchBounce,
} from '@truesweep/core';
import {
  type AnyJob,
  isSweepJob,
  type JobRecording,
  type JudgedReadings,
  judgeReadings,
  type PortReading,
  type PressureJob,
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
  readonly pumpDowns: readonly {
    readonly file: string;
    readonly steps: readonly HeldStep[];
    /** How fast the deepest step leaks: the time to 37 %, s; 1e18 with no fall, left out where too little was read. */
    readonly leak?: Seconds;
  }[];
  /** How a recorded switch changed, by the files; empty where there are none. */
  readonly bounces: readonly { readonly file: string; readonly bounce: SwitchBounce }[];
}

interface Recorded {
  readonly file: string;
  readonly sweep: Sweep;
  readonly steps: readonly HeldStep[];
  /** The place of its first step among the judged readings, behind the job's own. */
  readonly first: number;
}

/** The same with the samples of the pump-downs. */
export interface JudgedWithSamples extends JudgedJob {
  readonly recorded: readonly Recorded[];
}

/** Judges a job's readings with the steps of its recorded pump-downs. */
export async function judgedJob(
  job: ReadingsJob,
  jobPath: string,
  bounds: InputBounds,
): Promise<JudgedWithSamples> {
  const more: PortReading[] = [];
  const recorded: Recorded[] = [];
  const bounces: { file: string; bounce: SwitchBounce }[] = [];
  for (const told of 'recordings' in job ? (job.recordings ?? []) : []) {
    const file = join(dirname(jobPath), told.file);
    if ('ports' in told) {
      const { ports: _, portUncertainty: __, supply: ___, uncertainty: ____, ...how } = told;
      const { sweep, readings, steps } = await inFile(file, async () => {
        const read = await sweepOf(file, how, bounds);
        return { sweep: read, ...readPumpDown(read, { ...told, file }) };
      });
      recorded.push({ file, sweep, steps, first: (job.readings ?? []).length + more.length });
      more.push(...readings);
    } else {
      const { low, high, ...how } = told;
      const bounce = await inFile(file, async () => {
        const { time, signal } = await sweepOf(file, how, bounds);
        return switchBounce(time, signal, { low, high });
      });
      bounces.push({ file, bounce });
    }
  }
  const judged = judgeReadings(job, more);
  return {
    title: job.title,
    sensor: job.sensor.name,
    judged,
    pumpDowns: recorded.map(({ file, steps, first }) => {
      const leak = leakOf(job, judged, first, steps);
      return { file, steps, ...(leak !== undefined && { leak }) };
    }),
    bounces,
    recorded,
  };
}

/** How fast the deepest step of a pump-down leaks, of the readings from a place on that were judged. */
function leakOf(
  job: ReadingsJob,
  judged: JudgedReadings,
  first: number,
  steps: readonly HeldStep[],
): Seconds | undefined {
  if (judged.kind !== 'pressure') return undefined;
  const { kind: _, name: __, ...described } = (job as PressureJob).sensor;
  const readings = judged.readings.slice(first, first + steps.length);
  const gauge = Math.min(...readings.map((reading) => reading.gauge));
  const deepest = readings.findIndex((reading) => reading.gauge === gauge);
  if (!(gauge < 0)) return undefined;
  const { drift, driftUncertainty = 0 } = steps[deepest]!;
  if (drift === undefined) return undefined;
  const seen = Math.abs(drift) > 2 * driftUncertainty ? drift : 0;
  const { supply } = readings[deepest]!;
  return leakByDrift(described, { gauge, station: judged.station.pressure, supply }, seen);
}

/** The samples of a recording that belongs to the job. */
async function sweepOf(
  file: string,
  how: Omit<JobRecording, 'file'>,
  bounds: InputBounds,
): Promise<Sweep> {
  const pieces = inputPieces(file, bounds);
  const { sweep } = await readJobPieces(pieces, { ...how, file }, recorderJob);
  return sweep;
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

/** What is printed as data: without samples, and a break as 1e18 Ω, for JSON knows no infinity. */
export function printedJob({ title, sensor, judged, pumpDowns, bounces }: JudgedJob): JudgedJob {
  const finite = (_: string, value: unknown) =>
    value === Infinity ? 1e18 : value === -Infinity ? -1e18 : value;
  return JSON.parse(
    JSON.stringify({ title, sensor, judged, pumpDowns, bounces }, finite),
  ) as JudgedJob;
}
