import { type Expectation, expectation } from '@truesweep/core';
import type { Job } from './job.js';
import { jobCircuit } from './jobCircuit.js';
import { jobTolerances } from './jobTolerances.js';

/**
 * What a sound sensor must show on the hook-up of a job: curve, windows, and where a lifted wiper's signal goes.
 *
 * @throws InputError where the hook-up has no single output.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 4000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M' },
 * });
 * jobExpectation(job).windows.open.nominal.toFixed(3) // => '4.000'
 */
export function jobExpectation(job: Job): Expectation {
  return expectation(jobCircuit(job), jobTolerances(job));
}
