import { createHash } from 'node:crypto';
import { type Job, jobExpectation, writeJob } from '@truesweep/jobs';

/** What the queue holds of a job, once for all its recordings. */
export interface JobDefinition {
  /** SHA-256 of the text, 64 hexadecimal digits. */
  readonly id: string;
  /** The job without its list of recordings, as `writeJob` writes it. */
  readonly text: string;
}

/**
 * A job as the queue holds it.
 *
 * @throws InputError for a job that is wrong, or gives nothing to judge by.
 *
 * @example
 * import { loadJob } from '@truesweep/jobs/node';
 * const { id, text } = jobDefinition(await loadJob('examples/outboard-sensor.job.json'));
 * id.length // => 64
 * JSON.parse(text).recordings // => undefined
 */
export function jobDefinition(job: Job): JobDefinition {
  const { recordings: _, ...judgedBy } = job;
  jobExpectation(judgedBy);
  const text = writeJob(judgedBy);
  return { id: createHash('sha256').update(text).digest('hex'), text };
}
