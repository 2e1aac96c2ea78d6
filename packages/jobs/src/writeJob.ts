import type { Job } from './job.js';
import { knownJob } from './parseJob.js';

/**
 * The text of a job's file: JSON of the newest version with every quantity in SI units.
 *
 * @example
 * const text = writeJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 4700 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: 1e7 },
 * });
 * readJob(text).sensor.track // => 4700
 */
export function writeJob(job: Job): string {
  return `${JSON.stringify(knownJob(job), undefined, 2)}\n`;
}
