import { type Criteria, wholeCriteria } from '@truesweep/core';
import type { Job } from './job.js';
import { knownJob } from './parseJob.js';

/**
 * The limits that a job is judged by: the defaults with what the job names in their place.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M' },
 *   criteria: { dropout: '20 ms' },
 * });
 * jobCriteria(job).dropout // => 0.02
 */
export function jobCriteria(job: Job): Criteria {
  const { criteria } = knownJob(job);
  return wholeCriteria(criteria ?? {});
}
