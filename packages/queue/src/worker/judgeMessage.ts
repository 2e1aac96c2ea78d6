import { isInputError } from '@truesweep/core';
import { type Job, readJob } from '@truesweep/jobs';
import { judgeOne, type RecordingResult } from '@truesweep/jobs/node';
import {
  noSuchStorageSentence,
  programFaultSentence,
  wrongDefinitionSentence,
} from '../queueWords.js';
import { fileResult, resultName } from '../results/fileResult.js';
import type { Storage } from '../storage/storage.js';
import { StorageFault } from '../storage/storageFault.js';
import type { JudgeTask, TaskOutcome } from './judgeTask.js';

/** Where a judging process reads and writes. */
export interface JudgeStorages {
  readonly folder?: Storage;
  readonly bucket?: Storage;
  readonly results: Storage;
  /** The largest recording that is read, bytes. */
  readonly largest: number;
}

/** What is refused of a recording that may be there, or readable, the next time. */
const passing: readonly string[] = ['missing-file', 'unreadable-file'];

/** So many jobs are held. */
const most = 64;
const jobs = new Map<string, Job>();

/** Judges a message in this process and files what came of it. */
export async function judgeMessage(task: JudgeTask, storages: JudgeStorages): Promise<TaskOutcome> {
  const { message, definition } = task;
  let job: Job;
  try {
    job = jobOf(definition);
  } catch (error) {
    if (isInputError(error)) return poison(wrongDefinitionSentence(error.message));
    throw error;
  }
  const storage = storages[message.recording.in];
  if (!storage) return poison(noSuchStorageSentence(message.recording.in));
  try {
    const result = await judged(task, job, storage, storages);
    if (!result) return { kind: 'known' };
    const isRefused = 'refused' in result;
    if (isRefused && result.key === undefined && passing.includes(result.refused.code)) {
      return { kind: 'passing', reason: result.refused.sentence };
    }
    await fileResult(storages.results, result, task.id);
    return { kind: 'filed', outcome: isRefused ? 'refused' : result.verdict };
  } catch (error) {
    if (error instanceof StorageFault) return { kind: 'passing', reason: error.message };
    if (isInputError(error)) return poison(wrongDefinitionSentence(error.message));
    return poison(programFaultSentence(String((error instanceof Error && error.stack) || error)));
  }
}

async function judged(
  { message }: JudgeTask,
  job: Job,
  storage: Storage,
  { results, largest }: JudgeStorages,
): Promise<RecordingResult | undefined> {
  const { recording, file, sensor, date, note } = message;
  const { name, bytes, sha256, readAs } = recording;
  const source = (await storage.pathOf?.(name)) ?? (await storage.read(name, largest));
  const result = await judgeOne(source, job, {
    file,
    ...(sensor !== undefined && { sensor }),
    ...(date !== undefined && { date }),
    ...(note !== undefined && { note }),
    recording: { ...readAs, bytes, sha256 },
    most: largest,
    isKept: (key: string) => results.has(resultName(key)),
  });
  if (!result || !('refused' in result) || result.refused.path !== source) return result;
  // Where a worker has the folder is nothing to file.
  return { ...result, refused: { ...result.refused, path: file } };
}

function jobOf(text: string): Job {
  const job = jobs.get(text) ?? readJob(text);
  if (jobs.size >= most) jobs.clear();
  jobs.set(text, job);
  return job;
}

function poison(reason: string): TaskOutcome {
  return { kind: 'poison', reason };
}
