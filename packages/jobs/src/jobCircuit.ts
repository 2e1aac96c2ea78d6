import { type Circuit, inParallel } from '@truesweep/core';
import type { Job } from './job.js';
import { knownJob } from './parseJob.js';

/**
 * The bench circuit of a job: its sensor on its hook-up, with the instrument's input across the pull-down.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000, pullDown: '10k' },
 *   instrument: { name: 'Old meter', inputResistance: '40k' },
 * });
 * jobCircuit(job).load // => { pullDown: 8000 }
 */
export function jobCircuit(job: Job): Circuit {
  const { sensor, hookUp, instrument } = knownJob(job);
  const { kind: _, name: __, tolerances: ___, ...parts } = sensor;
  const { source, limiter, leads, pullDown, pullUp } = hookUp;
  return {
    source,
    limiter,
    ...(leads && { leads }),
    sensor: parts,
    load: {
      pullDown: inParallel(pullDown, instrument.inputResistance),
      ...(pullUp && { pullUp }),
    },
  };
}
