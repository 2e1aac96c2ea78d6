import type { Job } from './job.js';
import { writeFileAtomically } from './writeFileAtomically.js';
import { writeJob } from './writeJob.js';

/**
 * Saves a job in its file, whole or not at all.
 *
 * @param path Path of the file, from the working directory.
 * @param options With `overwrite` a file that is there already is replaced; else it is refused.
 * @throws InputError `file-exists` or `cannot-write`, with the path and what to do.
 *
 * @example
 * import { loadJob } from '@truesweep/jobs/node';
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * const refused = await saveJob('LICENSE', job).catch(({ code }) => code);
 * refused // => 'file-exists'
 */
export async function saveJob(
  path: string,
  job: Job,
  options: { readonly overwrite?: boolean } = {},
): Promise<void> {
  await writeFileAtomically(path, writeJob(job), options);
}
