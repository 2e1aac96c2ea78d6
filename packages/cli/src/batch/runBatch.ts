import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { InputError, isInputError } from '@truesweep/core';
import type { RecordingResult, RefusedRecording } from '@truesweep/jobs/node';
import { noJobNamedSentence, programFailedSentence } from '@truesweep/wording';
import manifest from '../../package.json' with { type: 'json' };
import type { BatchInput } from './batchInput.js';
import type { Journal } from './journal.js';
import type { JudgePool } from './judgePool.js';
import { type KnownJob, knownJobs } from './knownJobs.js';

/** What a batch judges, and with what. */
export interface BatchPlan {
  readonly inputs: AsyncIterable<BatchInput>;
  /** Path of the job of recordings that name none. */
  readonly job?: string;
  readonly journal: Journal;
  readonly pool: JudgePool;
  /** So many recordings are on their way at once. */
  readonly atOnce: number;
  /** No larger recording is read; nor more than this at once of several, bytes. */
  readonly largest: number;
  /** Told each result once it is in the journal, the recording's size, bytes, and whether it was there before. */
  readonly onDone: (result: RecordingResult, bytes: number, isKept: boolean) => void;
  /** Nothing more is begun after it. */
  readonly signal: AbortSignal;
}

/**
 * Judges recordings as they are found, several at once. Each result is in the journal as soon as it is there.
 *
 * @returns How often the program itself failed.
 * @throws InputError where a result can't be written, or the inputs can't be told; what was begun is awaited and kept where it can be.
 */
export async function runBatch(plan: BatchPlan): Promise<number> {
  const { inputs, journal, pool, atOnce, largest, onDone, signal } = plan;
  const loadKnown = knownJobs();
  const running = new Set<Promise<void>>();
  let bytesRunning = 0;
  let failures = 0;
  let broken: unknown;

  const keep = (result: RecordingResult, bytes: number, isKept = false): void => {
    journal.add(result);
    onDone(result, bytes, isKept);
  };
  const judge = async (input: BatchInput, bytes: number): Promise<void> => {
    const refuse = (refusal: InputError) => keep(refused(input, refusal), bytes);
    if (input.refusal) return refuse(input.refusal);
    const jobPath = input.job ?? plan.job;
    let known: KnownJob;
    try {
      if (jobPath === undefined) {
        throw new InputError('missing', input.file, noJobNamedSentence);
      }
      known = await loadKnown(jobPath);
    } catch (error) {
      if (isInputError(error)) return refuse(error);
      throw error;
    }
    const { file, sensor, date, note } = input;
    const recording = known.listed.get(resolve(file));
    const told = { file, sensor, date, note, recording };
    const facts = Object.fromEntries(
      Object.entries(told).filter(([, value]) => value !== undefined),
    );
    const outcome = await pool.judge(
      { ...facts, file, most: largest, job: known.text },
      (key) => journal.find(key, file) !== undefined,
    );
    if (outcome.kind === 'result') return keep(outcome.result, bytes);
    if (outcome.kind === 'failed') {
      failures += 1;
      return keep(failed(input, known, outcome.fault), bytes);
    }
    const kept = journal.find(outcome.key, file)!;
    return keep(filedAs(kept, input, known), bytes, true);
  };

  try {
    for await (const input of inputs) {
      const bytes = await sizeOf(input);
      while (running.size >= atOnce || (running.size > 0 && bytesRunning + bytes > largest)) {
        await Promise.race(running);
      }
      if (signal.aborted || broken !== undefined) break;
      bytesRunning += bytes;
      const work = judge(input, bytes)
        .catch((error: unknown) => {
          broken ??= error;
        })
        .finally(() => {
          running.delete(work);
          bytesRunning -= bytes;
        });
      running.add(work);
    }
  } finally {
    await Promise.all(running);
  }
  if (broken !== undefined) throw broken;
  return failures;
}

/** A file's size, bytes; 0 where it has none, or isn't there. */
async function sizeOf({ file, refusal }: BatchInput): Promise<number> {
  if (refusal) return 0;
  const there = await stat(file).catch(() => undefined);
  return there?.isFile() ? there.size : 0;
}

/** A result of the same bytes as this recording's. */
function filedAs(kept: RecordingResult, input: BatchInput, { job }: KnownJob): RecordingResult {
  const { file, job: _, sensor, date, note, key, ...rest } = kept;
  return {
    ...(key !== undefined && { key }),
    ...factsOf(input, job.title, job.sensor.name),
    ...rest,
  } as RecordingResult;
}

function factsOf({ file, sensor, date, note }: BatchInput, title: string, name: string) {
  return {
    file,
    job: title,
    sensor: sensor ?? name,
    ...(date !== undefined && { date }),
    ...(note !== undefined && { note }),
  };
}

function refused(input: BatchInput, { code, path, place, message }: InputError): RefusedRecording {
  return {
    ...factsOf(input, input.job ?? '', ''),
    refused: { code, path, ...(place && { place }), sentence: message },
    version: manifest.version,
    judgedAt: new Date().toISOString(),
  };
}

function failed(input: BatchInput, { job }: KnownJob, fault: string): RefusedRecording {
  const sentence = programFailedSentence(fault);
  return {
    ...factsOf(input, job.title, job.sensor.name),
    refused: { code: 'failed', path: input.file, sentence },
    version: manifest.version,
    judgedAt: new Date().toISOString(),
  };
}
