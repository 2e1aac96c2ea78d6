import { type SimulatedMovement, simulateSweep } from '@truesweep/core';
import { type Job, jobCircuit, parseJob } from '@truesweep/jobs';
import { checkedLine } from '../controller/checkedLine.js';

/** The job of the recordings: a controller of 10 bits on the bench. */
export const job: Job = parseJob({
  version: 3,
  title: 'Starboard engine, sensor off the throttle body',
  sensor: {
    kind: 'potentiometer',
    name: 'Outboard throttle sensor',
    track: 5000,
    closedPosition: 0.1,
    openPosition: 0.9,
    tolerances: { closedPosition: '3 %', openPosition: '3 %' },
  },
  hookUp: { source: { volts: 5 }, limiter: 1000 },
  instrument: { name: 'Controller on the bench', inputResistance: '10M', uncertainty: '10 mV' },
});

/** How the rows are read: the column of positions holds each row's number, by which a test knows it again. */
export const rowOptions = {
  delimiter: ',',
  timeUnit: 'µs',
  signalUnit: 'counts',
  voltsPerUnit: 5 / 1023,
  positionColumn: 2,
} as const;

export const heading = 'time (us),signal (counts),number';

/** A row as it was sent. */
export interface SentRow {
  /** From the recorder's start on, µs. */
  readonly stamp: number;
  readonly counts: number;
}

const pass: readonly SimulatedMovement[] = [
  { kind: 'turn', to: 1, seconds: 0.8, unevenness: 0.01 },
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 0, seconds: 0.8, unevenness: 0.01 },
  { kind: 'hold', seconds: 0.4 },
];
const snap: readonly SimulatedMovement[] = [
  { kind: 'turn', to: 1, seconds: 0.8 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'snap', seconds: 0.05, restitution: 0.3 },
  { kind: 'hold', seconds: 0.5 },
];

/** A sweep of the job's sensor in counts, a millisecond apart: so many passes, one snap, and a worn spot where one is told. */
export function sentRows(seed: number, passes: number, wornAt?: number): readonly SentRow[] {
  const { sweep } = simulateSweep({
    circuit: jobCircuit(job),
    movements: [
      { kind: 'hold', seconds: 0.4 },
      ...Array.from({ length: passes }, () => pass).flat(),
      ...snap,
    ],
    recorder: { interval: 1e-3, noise: 0.003 },
    ...(wornAt !== undefined && {
      faults: [{ kind: 'worn-spot', travel: wornAt, width: 0.03, ohms: 1e12 }],
    }),
    seed,
  });
  return Array.from(sweep.time, (at, i) => ({
    stamp: Math.round(1e6 * at),
    counts: Math.max(0, Math.round((1023 * sweep.signal[i]!) / 5)),
  }));
}

/** The line of a row, with its number and from a first stamp on; the counter of stamps has 32 bits. */
export function lineOf({ stamp, counts }: SentRow, number: number, first: number): string {
  return `${(first + stamp) % 2 ** 32},${counts},${number}`;
}

/** Lines as bytes, each with its check where that is asked for. */
export function bytesOf(lines: readonly string[], isChecked: boolean): Uint8Array {
  const text = lines.map((line) => `${isChecked ? checkedLine(line) : line}\n`).join('');
  return new TextEncoder().encode(text);
}
