import { createHash } from 'node:crypto';
import { canonicalJson } from './canonicalJson.js';
import type { Job, JobRecording } from './job.js';
import { jobCriteria } from './jobCriteria.js';
import { version } from './version.js';

/** What changes how a recording is read. */
export type ReadAs = Pick<JobRecording, 'text' | 'sound' | 'stretches'>;

/**
 * A name for the judgement of a recording: SHA-256 over the hash of its bytes, what of the job it is judged by, how it is read, all limits (also
 * those that the job doesn't name), and the version. Names, titles and notes make no difference.
 */
export function judgementKey(sha256: string, job: Job, { text, sound, stretches }: ReadAs): string {
  const { name: _, ...sensor } = job.sensor;
  const { name: __, ...instrument } = job.instrument;
  const judged = {
    version,
    recording: sha256,
    job: { sensor, hookUp: job.hookUp, instrument },
    criteria: jobCriteria(job),
    readAs: { text, sound, stretches },
  };
  return createHash('sha256').update(canonicalJson(judged)).digest('hex');
}
