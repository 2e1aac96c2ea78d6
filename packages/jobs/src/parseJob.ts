import { checkReadable, InputError, isInputError } from '@truesweep/core';
import * as v from 'valibot';
import type { Job } from './job.js';
import { jobSchema, jobSchemaOfVersion1, jobSchemaOfVersion2 } from './jobSchema.js';
import { missingFields } from './missingFields.js';
import { inputErrorOf } from './refusal.js';

/**
 * Reads a job from unknown JSON. A quantity is a number in the SI unit or a text such as `"4k7"`, `"5 V"` or
 * `"2 %"`; a tolerance is a fraction or a text such as `"±5 %"`. Every number of the result is in SI units. A job of version 1 or 2 is
 * read into one of version 3: its sensor becomes a potentiometer, and how a recording of version 1 is read moves into its group `text`.
 *
 * @throws InputError with the path of the field, such as `job.hookUp.limiter`, and with every field that is missing: `newer-version` for a job that a
 * later program wrote, `missing`, `unknown-field` (with the nearest known one), `negative`, `out-of-range`,
 * `not-a-quantity` and the other codes of the core's `parseQuantity`, `not-a-text`, `not-a-group`, `not-a-list`,
 * `not-a-count`, `not-a-column`, `not-one-of`, `not-a-version`, `no-travel`, `no-range`, `no-pull-down`, `out-of-order`.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: '4k7', tolerances: { track: '±20 %' } },
 *   hookUp: { source: { volts: '5 V' }, limiter: '1 kΩ' },
 *   instrument: { name: 'Bench logger', inputResistance: '10M' },
 * });
 * job.sensor.track // => 4700
 * job.sensor.tolerances // => { track: 0.2 }
 */
export function parseJob(json: unknown): Job {
  try {
    return parsed(json);
  } catch (error) {
    if (!isInputError(error)) checkReadable(json, 'job');
    throw error;
  }
}

function parsed(json: unknown): Job {
  const version = versionOf(json);
  if (version > 3) refuseNewer(version);
  if (version === 3) refuseOtherKind(json);
  const schema =
    version === 1 ? jobSchemaOfVersion1 : version === 2 ? jobSchemaOfVersion2 : jobSchema;
  const result = v.safeParse(schema, json, { abortEarly: true });
  if (result.success) {
    known.add(result.output);
    return result.output;
  }
  throw withAllMissing(inputErrorOf(result.issues[0]), missingFields(schema, json, 'job'));
}

/** Kinds of sensors that have jobs of their own. */
const otherKinds = ['thermistor', 'pressure', 'two-state', 'winding'];
/** Sensors without a wiper, which people may take for potentiometers. */
const contactless = ['hall', 'inductive', 'contactless'];

/** Refuses a sensor that is no potentiometer, with what to do with it. */
function refuseOtherKind(json: unknown): void {
  const sensor = (json as { readonly sensor?: unknown }).sensor;
  const kind = (sensor as { readonly kind?: unknown } | null | undefined)?.kind;
  if (typeof kind !== 'string') return;
  refuseContactless(kind);
  if (!otherKinds.includes(kind)) return;
  throw new InputError(
    'not-a-potentiometer',
    'job.sensor.kind',
    `job.sensor.kind is ${JSON.stringify(kind)}; only a potentiometer has a sweep, this sensor is judged by readings.`,
  );
}

/** Refuses a Hall or inductive sensor: it is fed and measured otherwise. */
export function refuseContactless(kind: unknown): void {
  if (!contactless.includes(kind as string)) return;
  throw new InputError(
    'not-a-potentiometer',
    'job.sensor.kind',
    `job.sensor.kind is ${JSON.stringify(kind)}; such a sensor has no wiper: an ohmmeter's readings mean nothing, and behind a limiting resistor it starves. Test it as its machine's service manual says.`,
  );
}

/** The refusal with every field that is missing, where it is more than the one that it names. */
export function withAllMissing(error: InputError, missing: readonly string[]): InputError {
  const { code, path, message } = error;
  if (code === 'unknown-field' || missing.length === 0) return error;
  if (code !== 'missing') return new InputError(code, path, `${message} ${areMissing(missing)}`);
  if (missing.length === 1 && missing[0] === path) return error;
  return new InputError(code, missing[0]!, areMissing(missing));
}

function areMissing(paths: readonly string[]): string {
  const last = paths.at(-1)!;
  if (paths.length === 1) return `${last} is missing.`;
  return `${paths.slice(0, -1).join(', ')} and ${last} are missing; a job needs each of them.`;
}

/** Jobs that were read: they need no second look. */
export const known = new WeakSet<object>();

/** A job that is surely one: as it is where {@link parseJob} read it, else read as that does. */
export function knownJob(job: Job): Job {
  return known.has(job) ? job : parseJob(job);
}

/** The version that a job says, or 0 where it says none. */
export function versionOf(json: unknown): number {
  if (typeof json !== 'object' || json === null || !('version' in json)) return 0;
  const { version } = json;
  return typeof version === 'number' && Number.isInteger(version) ? version : 0;
}

export function refuseNewer(version: number): never {
  throw new InputError(
    'newer-version',
    'job.version',
    `The job is of version ${version}; this program reads the versions 1 to 3. Open it with a newer truesweep.`,
  );
}
