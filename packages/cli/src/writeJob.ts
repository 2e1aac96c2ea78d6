import { lstat } from 'node:fs/promises';
import { dirname, relative, resolve, sep } from 'node:path';
import { InputError } from '@truesweep/core';
import { saveJob } from '@truesweep/jobs/node';
import { fileIsThereSentence, jobEntries, lackingSentence } from '@truesweep/wording';
import { askForJob } from './askForJob.js';
import { flagOf, jobFields } from './jobFields.js';
import { type JobEntries, jobOfEntries, wrongEntry } from './jobOfEntries.js';
import { refuseInput } from './refuseInput.js';
import type { Output } from './terminal.js';

/** Where a job is written to, and what it lists. */
export interface JobFile {
  readonly out: string;
  readonly overwrite?: true;
  readonly recording?: readonly string[];
}

/**
 * Writes a job of what was told of its fields; what is missing is asked for where somebody can answer. Nothing is written before the end.
 *
 * @throws InputError with all that is missing, or wrong, at once; or where the file may not be written.
 */
export async function writeJob(told: JobEntries, file: JobFile, output: Output): Promise<void> {
  const { out, overwrite = false, recording = [] } = file;
  await refuseInput(out, recording);
  if (!overwrite && (await lstat(out).catch(() => undefined))) {
    throw new InputError('file-exists', out, fileIsThereSentence);
  }
  refuseWrong(told);
  const missing = jobFields.filter(({ name, isNeeded }) => isNeeded && told[name] === undefined);
  if (missing.length > 0 && !output.questions) refuseMissing(missing);
  const entries = missing.length > 0 ? await askForJob(told, output.questions!(), output) : told;
  const listed = recording.map((path) => fromFolder(dirname(out), path));
  await saveJob(out, jobOfEntries(entries, listed), { overwrite });
}

function refuseMissing(missing: typeof jobFields): never {
  const parts = missing.map(({ name, flags }) => {
    const { label, example } = jobEntries[name];
    return { written: flags, meaning: `${label}, such as ${example}` };
  });
  throw new InputError('missing', flagOf(missing[0]!), lackingSentence('write-job', parts));
}

/** Refuses every entry that is wrong, in one refusal. */
function refuseWrong(told: JobEntries): void {
  let right: JobEntries = {};
  const wrongs: InputError[] = [];
  for (const field of jobFields) {
    const text = told[field.name];
    if (text === undefined) continue;
    const wrong = wrongEntry(field, text, right);
    if (wrong) wrongs.push(wrong);
    else right = { ...right, [field.name]: text };
  }
  const [first] = wrongs;
  if (!first) return;
  throw new InputError(first.code, first.path, wrongs.map(({ message }) => message).join(' '));
}

/** A path from a job's own folder, with the slashes that every system reads. */
function fromFolder(folder: string, path: string): string {
  return relative(resolve(folder), resolve(path)).split(sep).join('/');
}
