import { InputError } from '@truesweep/core';
import { findJsonFault } from './findJsonFault.js';
import type { Job } from './job.js';
import { parseJob } from './parseJob.js';

/**
 * Reads a job from the text of its file.
 *
 * @param text JSON; a byte order mark before it is passed over.
 * @param name Name of the file, for the error where it is no JSON.
 * @throws InputError `not-json` with line and column, or what {@link parseJob} refuses.
 *
 * @example
 * let code;
 * try {
 *   readJob('{ "version": 1, }', 'shelf.json');
 * } catch (error) {
 *   code = `${error.code} at column ${error.place.column}`;
 * }
 * code // => 'not-json at column 17'
 */
export function readJob(text: string, name = 'job'): Job {
  const plain = text.replace(/^\uFEFF/, '');
  const fault = findJsonFault(plain);
  if (fault !== undefined) refuse(plain, fault, name);
  return parseJob(JSON.parse(plain));
}

function refuse(text: string, fault: number, name: string): never {
  const before = text.slice(0, fault).split(/\r\n|\n|\r/);
  const place = { line: before.length, column: (before.at(-1) ?? '').length + 1 };
  const wrong =
    fault >= text.length
      ? 'ends before the job is whole'
      : `is no JSON from “${text.slice(fault, fault + 12).split(/[\r\n]/)[0]}” on`;
  throw new InputError(
    'not-json',
    name,
    `The file ${wrong}; look there for a missing or spare comma, quotation mark or bracket.`,
    place,
  );
}
