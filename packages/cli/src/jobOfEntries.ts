import { InputError } from '@truesweep/core';
import { type Job, parseJob } from '@truesweep/jobs';
import { flagOf, type JobField, type JobFieldName, jobFields } from './jobFields.js';

/** What was typed for each field. */
export type JobEntries = Readonly<Partial<Record<JobFieldName, string>>>;

/** What stands for a field that isn't told yet, so that the others can be looked at. */
const stand: JobEntries = {
  title: 'job',
  sensor: 'sensor',
  track: '1 kΩ',
  source: '5 V',
  limiter: '1 kΩ',
  instrument: 'instrument',
  inputResistance: '10 MΩ',
};

/**
 * A job of what was typed for its fields.
 *
 * @throws InputError as `parseJob` does.
 */
export function jobOfEntries(entries: JobEntries, recordings: readonly string[] = []): Job {
  const json: Record<string, unknown> = { version: 3, sensor: { kind: 'potentiometer' } };
  for (const { name, path } of jobFields) {
    const text = entries[name];
    if (text !== undefined) place(json, path.split('.'), text);
  }
  if (recordings.length > 0) json.recordings = recordings.map((file) => ({ file }));
  return parseJob(json);
}

function place(group: Record<string, unknown>, [name = '', ...rest]: string[], text: string): void {
  if (rest.length === 0) group[name] = text;
  else {
    group[name] ??= {};
    place(group[name] as Record<string, unknown>, rest, text);
  }
}

/** What is wrong with what was typed for a field, beside others that are right; undefined where nothing is. */
export function wrongEntry(
  field: JobField,
  text: string,
  others: JobEntries,
): InputError | undefined {
  try {
    jobOfEntries({ ...stand, ...others, [field.name]: text });
    return undefined;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { code, path, message, place: where } = error;
    const flag = flagOf(field);
    return new InputError(code, flag, message.replace(path, flag), where);
  }
}
