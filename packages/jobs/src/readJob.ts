import { InputError } from '@truesweep/core';
import { checkText } from './checkInput.js';
import { findJsonFault, type JsonFault } from './findJsonFault.js';
import type { Job } from './job.js';
import { parseJob } from './parseJob.js';
import { shown } from './refusal.js';

/**
 * Reads a job from the text of its file.
 *
 * @param text JSON; a byte order mark before it is passed over.
 * @param name Name of the file, for the error where it is no JSON.
 * @throws InputError `not-json` or, for a field that stands twice, `field-twice`, with line and column, or what {@link parseJob} refuses.
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
  return parseJob(jsonOfJob(text, name));
}

/** The JSON in a job's file. */
export function jsonOfJob(text: string, name: string): unknown {
  checkText(text, 'text', "the text of a job's file; decode its bytes first");
  checkText(name, 'name', 'the name of the file');
  const plain = text.replace(/^\uFEFF/, '');
  const fault = findJsonFault(plain);
  if (fault !== undefined) refuse(plain, fault, name);
  return JSON.parse(plain);
}

function refuse(text: string, { at, twice }: JsonFault, name: string): never {
  const before = text.slice(0, at).split(/\r\n|\n|\r/);
  const place = { line: before.length, column: (before.at(-1) ?? '').length + 1 };
  if (twice !== undefined) {
    const sentence = `The field ${shown(twice)} stands twice in its group; keep the one that holds.`;
    throw new InputError('field-twice', name, sentence, place);
  }
  const wrong =
    at >= text.length
      ? 'ends before the job is whole'
      : `is no JSON from “${text.slice(at, at + 12).split(/[\r\n]/)[0]}” on`;
  throw new InputError(
    'not-json',
    name,
    `The file ${wrong}; look there for a missing or spare comma, quotation mark or bracket.`,
    place,
  );
}
