import { parseAnyJob } from './parseAnyJob.js';
import type { AnyJob } from './readingsJob.js';
import { jsonOfJob } from './readJob.js';

/**
 * Reads a job of any kind of sensor from the text of its file.
 *
 * @param text JSON; a byte order mark before it is passed over.
 * @param name Name of the file, for the error where it is no JSON.
 * @throws InputError `not-json` or `field-twice`, with line and column, or what {@link parseAnyJob} refuses.
 *
 * @example
 * const text = '{ "version": 3, "title": "Coil", "sensor": { "kind": "winding", "name": "Coil", "low": "0.7 Ω" } }';
 * readAnyJob(text).sensor.low // => 0.7
 */
export function readAnyJob(text: string, name = 'job'): AnyJob {
  return parseAnyJob(jsonOfJob(text, name));
}
