import { checkReadable, InputError, isInputError, parseQuantity } from '@truesweep/core';
import * as v from 'valibot';
import { missingFields } from './missingFields.js';
import { known, parseJob, refuseContactless, versionOf, withAllMissing } from './parseJob.js';
import type { AnyJob, ReadingsJob, TwoStateJob } from './readingsJob.js';
import { readingsSchemas } from './readingsJobSchema.js';
import { inputErrorOf } from './refusal.js';

/**
 * Reads a job of any kind of sensor from unknown JSON: of a potentiometer as {@link parseJob} does, of a thermistor, a pressure sensor, a sensor of
 * two states or a winding with its single readings. Temperatures are numbers in °C or texts with their unit, pressures numbers in Pa or such
 * texts; at the port of a pressure sensor the text says `absolute`, `gauge` or `vacuum`, or is `open`.
 *
 * @throws InputError as {@link parseJob} does; `not-a-potentiometer` for a Hall or inductive sensor, `gauge-or-absolute`, `no-unit`. Whether the
 * numbers of a sensor agree with each other is told where it is judged.
 *
 * @example
 * const job = parseAnyJob({
 *   version: 3,
 *   title: 'Coolant sensor of the workshop boat',
 *   sensor: {
 *     kind: 'thermistor',
 *     name: 'Coolant sensor',
 *     law: { kind: 'b', b: 3640, ohms: '2.044 kΩ', from: '25 °C', to: '100 °C', lowest: '32 °F' },
 *     tolerances: { ohms: '±5 %', b: '±1 %' },
 *   },
 *   readings: [{ bath: 'ice', ohms: '6.05 kΩ', uncertainty: 15 }],
 * });
 * job.sensor.kind // => 'thermistor'
 * job.readings[0].ohms // => 6050
 */
export function parseAnyJob(json: unknown): AnyJob {
  try {
    const schema = readingsSchemaOf(json);
    if (!schema) return parseJob(json);
    const result = v.safeParse(schema, json, { abortEarly: true });
    if (result.success) {
      const job = result.output as ReadingsJob;
      if (job.sensor.kind === 'two-state') refuseOtherUnits(json, job as TwoStateJob);
      known.add(job);
      return job;
    }
    throw withAllMissing(inputErrorOf(result.issues[0]), missingFields(schema, json, 'job'));
  } catch (error) {
    if (!isInputError(error)) checkReadable(json, 'job');
    throw error;
  }
}

/** A job that is surely one: as it is where it was read here, else read as {@link parseAnyJob} does. */
export function knownAnyJob<Kind extends AnyJob>(job: Kind): Kind {
  return known.has(job) ? job : (parseAnyJob(job) as Kind);
}

/** Refuses a value that is written in ohms for a sensor that is read in volts, and the other way round. */
function refuseOtherUnits(json: unknown, { sensor }: TwoStateJob): void {
  const { readings = [] } = json as { readonly readings?: readonly { readonly value?: unknown }[] };
  const unit = sensor.reads === 'ohms' ? 'Ω' : 'V';
  readings.forEach(({ value }, i) => {
    if (typeof value !== 'string' || (unit === 'Ω' && /^\s*(ol|open)\s*$/i.test(value))) return;
    parseQuantity(value, unit, `job.readings[${i}].value`);
  });
}

/** The schema of a job of single readings; nothing for one of sweeps, and for what is no job. */
function readingsSchemaOf(json: unknown) {
  const sensor = (json as { readonly sensor?: unknown } | null | undefined)?.sensor;
  const kind = (sensor as { readonly kind?: unknown } | null | undefined)?.kind;
  refuseContactless(kind);
  const isKnown = typeof kind === 'string' && Object.hasOwn(readingsSchemas, kind);
  if (!isKnown) return undefined;
  if (versionOf(json) < 3) {
    throw new InputError(
      'not-a-version',
      'job.version',
      'job.version must be 3 for such a sensor: the versions before knew potentiometers only.',
    );
  }
  return versionOf(json) === 3 ? readingsSchemas[kind as keyof typeof readingsSchemas] : undefined;
}
