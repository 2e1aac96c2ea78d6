import { dirname, join, resolve } from 'node:path';
import { InputError, isInputError } from '@truesweep/core';
import { type Job, type JobRecording, jobExpectation, writeJob } from '@truesweep/jobs';
import { loadJob } from '@truesweep/jobs/node';

/** A job that recordings are judged by. */
export interface KnownJob {
  readonly job: Job;
  /** Its text, for workers. */
  readonly text: string;
  /** What it says of recordings, by their whole paths. */
  readonly listed: ReadonlyMap<string, Omit<JobRecording, 'file'>>;
}

/** So many are held: a manifest may name one for each recording. */
const most = 256;

/** Loads jobs by their paths, each once; a wrong one is told to each recording that is to be judged by it. */
export function knownJobs(): (path: string) => Promise<KnownJob> {
  const known = new Map<string, Promise<KnownJob>>();
  return (path) => {
    const job = known.get(path) ?? load(path);
    // Who asks for it is told.
    job.catch(() => {});
    if (known.size >= most) known.clear();
    known.set(path, job);
    return job;
  };
}

async function load(path: string): Promise<KnownJob> {
  try {
    const job = await loadJob(path);
    jobExpectation(job);
    const listed = (job.recordings ?? []).map(
      ({ file, ...how }) => [resolve(join(dirname(path), file)), how] as const,
    );
    return { job, text: writeJob(job), listed: new Map(listed.toReversed()) };
  } catch (error) {
    if (!isInputError(error) || error.path === path) throw error;
    throw new InputError(error.code, `${path}, ${error.path}`, error.message, error.place);
  }
}
