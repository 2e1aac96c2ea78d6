import { jobText } from './loadJob.js';
import { readAnyJob } from './readAnyJob.js';
import type { AnyJob } from './readingsJob.js';

/**
 * Reads a job of any kind of sensor from its file.
 *
 * @param path Path of the file, from the working directory.
 * @throws InputError as `loadJob` does for the file, and as `parseAnyJob` does for the job.
 *
 * @example
 * const job = await loadAnyJob('examples/coolant-sensor.job.json');
 * job.sensor.kind // => 'thermistor'
 */
export async function loadAnyJob(path: string): Promise<AnyJob> {
  return readAnyJob(await jobText(path), path);
}
