import { InputError, type InputErrorCode } from '@truesweep/core';
import * as v from 'valibot';
import { isObjectName } from '../storage/objectName.js';
import type { Message } from './message.js';

/** A field of which any value but those that fit is refused with what it must be. */
const field = <Value>(code: InputErrorCode, wanted: string, fits: (value: unknown) => boolean) =>
  v.custom<Value>(fits, JSON.stringify([code, wanted]));

/** Longer texts are no names, dates or notes; characters. */
const longest = 4096;
const isText = (value: unknown) =>
  typeof value === 'string' && value.trim() !== '' && value.length <= longest;
const text = field<string>('not-a-text', `a text of 1 to ${longest} characters`, isText);
const hash = field<string>(
  'not-a-hash',
  'a SHA-256 as 64 hexadecimal digits in small letters',
  (value) => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value),
);
const isGroup = (value: unknown) =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const schema = v.strictObject({
  version: field<1>('not-a-version', '1', (value) => value === 1),
  recording: v.strictObject({
    in: field<'folder' | 'bucket'>('not-one-of', '“folder” or “bucket”', (value) =>
      ['folder', 'bucket'].includes(value as string),
    ),
    name: field<string>(
      'not-a-name',
      'a relative name with slashes between its parts, without “..”',
      isObjectName,
    ),
    bytes: field<number>(
      'not-a-count',
      'a whole number, 0 or more',
      (value) => Number.isSafeInteger(value) && (value as number) >= 0,
    ),
    sha256: hash,
    // What stands in it is checked with the job when the recording is judged.
    readAs: v.exactOptional(
      field<NonNullable<Message['recording']['readAs']>>(
        'not-a-group',
        'a group of fields',
        isGroup,
      ),
    ),
  }),
  definition: hash,
  file: text,
  sensor: v.exactOptional(text),
  date: v.exactOptional(text),
  note: v.exactOptional(text),
});

/**
 * Reads what a queue holds, at the door: whoever put it there, of a message nothing but its known fields comes through, each as it must be.
 *
 * @throws InputError with the field that is wrong: `newer-version` for one of a later program, which a newer worker reads.
 *
 * @example
 * const sha256 = 'ab'.repeat(32);
 * const message = {
 *   version: 1,
 *   recording: { in: 'folder', name: '2026/port.csv', bytes: 52000, sha256 },
 *   definition: 'cd'.repeat(32),
 *   file: 'port.csv',
 * };
 * readMessage(message).recording.name // => '2026/port.csv'
 */
export function readMessage(data: unknown): Message {
  if (!isGroup(data)) {
    throw new InputError('not-a-group', 'message', 'message must be a group of fields.');
  }
  const { version } = data as { readonly version?: unknown };
  if (Number.isInteger(version) && (version as number) > 1) {
    throw new InputError(
      'newer-version',
      'message.version',
      `The message is of version ${version}; this worker reads version 1. Start a newer one, then have it tried again.`,
    );
  }
  const read = v.safeParse(schema, data, { abortEarly: true });
  if (!read.success) throw refusalOf(read.issues[0]);
  return read.output as Message;
}

function refusalOf(issue: v.BaseIssue<unknown>): InputError {
  const path = ['message', ...(issue.path ?? []).map(({ key }) => String(key))].join('.');
  if (issue.type === 'strict_object') {
    if (issue.expected === 'never') {
      return new InputError(
        'unknown-field',
        path,
        `${path} is not known; a message has no such field.`,
      );
    }
    if (issue.received === 'undefined')
      return new InputError('missing', path, `${path} is missing.`);
    return new InputError('not-a-group', path, `${path} must be a group of fields.`);
  }
  const [code, wanted] = JSON.parse(issue.message) as [InputErrorCode, string];
  return new InputError(code, path, `${path} must be ${wanted}.`);
}
