import { InputError } from '@truesweep/core';
import * as v from 'valibot';
import type { Job } from './job.js';
import { jobSchema } from './jobSchema.js';
import { inputErrorOf } from './refusal.js';

/**
 * Reads a job from unknown JSON. A quantity is a number in the SI unit or a text such as `"4k7"`, `"5 V"` or
 * `"2 %"`; a tolerance is a fraction or a text such as `"±5 %"`. Every number of the result is in SI units.
 *
 * @throws InputError with the path of the field, such as `job.hookUp.limiter`: `newer-version` for a job that a
 * later program wrote, `missing`, `unknown-field` (with the nearest known one), `negative`, `out-of-range`,
 * `not-a-quantity` and the other codes of the core's `parseQuantity`, `not-a-text`, `not-a-group`, `not-a-list`,
 * `not-a-count`, `not-a-column`, `not-one-of`, `not-a-version`, `no-travel`, `no-range`, `no-pull-down`.
 *
 * @example
 * const job = parseJob({
 *   version: 1,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { name: 'Outboard throttle sensor', track: '4k7', tolerances: { track: '±20 %' } },
 *   hookUp: { source: { volts: '5 V' }, limiter: '1 kΩ' },
 *   instrument: { name: 'Bench logger', inputResistance: '10M' },
 * });
 * job.sensor.track // => 4700
 * job.sensor.tolerances // => { track: 0.2 }
 */
export function parseJob(json: unknown): Job {
  refuseNewer(json);
  const result = v.safeParse(jobSchema, json, { abortPipeEarly: true });
  if (result.success) return result.output;
  throw inputErrorOf(result.issues);
}

function refuseNewer(json: unknown): void {
  if (typeof json !== 'object' || json === null || !('version' in json)) return;
  const { version } = json;
  if (typeof version !== 'number' || !Number.isInteger(version) || version <= 1) return;
  throw new InputError(
    'newer-version',
    'job.version',
    `The job is of version ${version}; this program reads version 1. Open it with a newer truesweep.`,
  );
}
