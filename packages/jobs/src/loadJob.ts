import { InputError } from '@truesweep/core';
import type { Job } from './job.js';
import { readFileBytes } from './readFileBytes.js';
import { readJob } from './readJob.js';

/** No job's file is larger, bytes. */
const largestJob = 2 ** 24;

/**
 * Reads a job from its file.
 *
 * @param path Path of the file, from the working directory.
 * @throws InputError `missing-file`, `not-a-file`, `unreadable-file`, `file-too-large` (above 16 MB of 2²⁰ bytes, for no job is that large), `not-utf-8`, `not-json`, `field-twice`, or what `parseJob`
 * refuses.
 *
 * @example
 * const job = await loadJob('examples/outboard-sensor.job.json');
 * job.hookUp.limiter // => 1000
 */
export async function loadJob(path: string): Promise<Job> {
  return readJob(await jobText(path), path);
}

/** The text of a job's file. */
export async function jobText(path: string): Promise<string> {
  return textOf(await readFileBytes(path, { most: largestJob }), path);
}

function textOf(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new InputError('not-utf-8', path, 'The file is no text in UTF-8; save the job as such.');
  }
}
