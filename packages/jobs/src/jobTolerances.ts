import type { Tolerances } from '@truesweep/core';
import type { Job } from './job.js';
import { knownJob } from './parseJob.js';

/**
 * How far the parts of a job may be from their nominal values. The pull-down's tolerance is taken for the pull-down
 * and the instrument's input together, which is never less than it is.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000, tolerances: { track: '±20 %' } },
 *   hookUp: { source: { volts: 5 }, limiter: 1000, tolerances: { limiter: '±5 %' } },
 *   instrument: { name: 'Bench logger', inputResistance: '10M' },
 * });
 * jobTolerances(job) // => { track: 0.2, limiter: 0.05 }
 */
export function jobTolerances(job: Job): Tolerances {
  const { sensor, hookUp } = knownJob(job);
  return { ...sensor.tolerances, ...hookUp.tolerances };
}
