import { buffer } from 'node:stream/consumers';
import { type Job, readJob } from '@truesweep/jobs';
import { loadJob, readFileBytes } from '@truesweep/jobs/node';
import { standardInputName } from '@truesweep/wording';

/** The name that stands for the standard input. */
export const standardInput = '-';

/** The bytes of a file, or of the standard input for `-`. */
export async function readInput(path: string): Promise<Uint8Array> {
  return path === standardInput ? await buffer(process.stdin) : await readFileBytes(path);
}

/** The job of a file, or of the standard input for `-`. */
export async function readJobInput(path: string): Promise<Job> {
  if (path !== standardInput) return await loadJob(path);
  return readJob(new TextDecoder().decode(await readInput(path)), standardInputName);
}
