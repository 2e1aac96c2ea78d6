import { dirname, join } from 'node:path';
import {
  type HeldStep,
  InputError,
  leakByDrift,
  type Seconds,
  type Sweep,
  type SwitchBounce,
  stationPressure,
  switchBounce,
} from '@truesweep/core';
import {
  type AnyJob,
  isSweepJob,
  type JudgedReadings,
  judgeReadings,
  type PortReading,
  type PressureJob,
  type PumpDown,
  type ReadingsJob,
  readJobPieces,
  readPumpDown,
  type SwitchRecording,
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
    /** How fast the deepest step leaks: the time in which its vacuum falls to 37 %, s; 1e18 where no fall stands out of the noise, left out where nothing was pumped or too little read. */
    readonly leak?: Seconds;
  }[];
  /** How a recorded switch changed, by the files; empty where there are none. */
  readonly bounces: readonly { readonly file: string; readonly bounce: SwitchBounce }[];
}

interface Recorded {
  readonly file: string;
  readonly sweep: Sweep;
  readonly steps: readonly HeldStep[];
  readonly leak: Seconds | undefined;
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
  const recordings = job.sensor.kind === 'pressure' && 'recordings' in job ? job.recordings : [];
  for (const told of (recordings ?? []) as readonly PumpDown[]) {
    const file = join(dirname(jobPath), told.file);
    const { sweep, readings, steps } = await inFile(file, async () => {
      const { ports: _, portUncertainty: __, supply: ___, uncertainty: ____, ...how } = told;
      const { sweep } = await readJobPieces(
        inputPieces(file, bounds),
        { ...how, file },
        recorderJob,
      );
      return { sweep, ...readPumpDown(sweep, { ...told, file }) };
    });
    more.push(...readings);
    recorded.push({ file, sweep, steps, leak: leakOf(job as PressureJob, readings, steps) });
  }
  const bounces: { file: string; bounce: SwitchBounce }[] = [];
  const switches = job.sensor.kind === 'two-state' && 'recordings' in job ? job.recordings : [];
  for (const told of (switches ?? []) as readonly SwitchRecording[]) {
    const file = join(dirname(jobPath), told.file);
    const { low, high, ...how } = told;
    const bounce = await inFile(file, async () => {
      const { sweep } = await readJobPieces(
        inputPieces(file, bounds),
        { ...how, file },
        recorderJob,
      );
      return switchBounce(sweep.time, sweep.signal, { low, high });
    });
    bounces.push({ file, bounce });
  }
  return {
    title: job.title,
    sensor: job.sensor.name,
    judged: judgeReadings(job, more),
    pumpDowns: recorded.map(({ file, steps, leak }) => ({
      file,
      steps,
      ...(leak !== undefined && { leak }),
    })),
    bounces,
    recorded,
  };
}

/** How fast the deepest step of a pump-down leaks. */
function leakOf(
  { sensor, air }: PressureJob,
  readings: readonly PortReading[],
  steps: readonly HeldStep[],
): Seconds | undefined {
  const { kind: _, name: __, ...described } = sensor;
  const station = stationPressure(air).pressure;
  const depths = readings.map(({ port }) =>
    port === 'open' ? 0 : port.pascals - (port.reference === 'absolute' ? station : 0),
  );
  const gauge = Math.min(...depths);
  const deepest = depths.indexOf(gauge);
  if (!(gauge < 0)) return undefined;
  const { supply } = readings[deepest]!;
  const { drift, driftUncertainty = 0 } = steps[deepest]!;
  if (drift === undefined) return undefined;
  const seen = Math.abs(drift) > 2 * driftUncertainty ? drift : 0;
  return leakByDrift(described, { gauge, station, supply }, seen);
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
