import type { Recorder } from '@truesweep/core';
import type { Job } from './job.js';
import { knownJob } from './parseJob.js';

/**
 * What a job knows of its recorder.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M', resolution: '1 mV' },
 * });
 * jobRecorder(job) // => { resolution: 0.001 }
 */
export function jobRecorder(job: Job): Recorder {
  const { instrument } = knownJob(job);
  const { name: _, inputResistance: __, ...recorder } = instrument;
  return recorder;
}
