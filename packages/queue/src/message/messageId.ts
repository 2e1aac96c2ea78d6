import { createHash } from 'node:crypto';
import { version } from '../version.js';
import type { Message } from './message.js';

/**
 * The name of a message in the queue: SHA-256 over what is judged (the recording's bytes, how they are read, the job, the version of truesweep). Whoever
 * puts the same a second time finds it there; where it lies and what it is called make no difference.
 *
 * @returns 64 hexadecimal digits.
 *
 * @example
 * const one = { recording: { sha256: 'ab'.repeat(32) }, definition: 'cd'.repeat(32) };
 * messageId(one).length // => 64
 * messageId(one) === messageId({ ...one, definition: 'ef'.repeat(32) }) // => false
 */
export function messageId({
  recording: { sha256, readAs = {} },
  definition,
}: {
  readonly recording: Pick<Message['recording'], 'sha256' | 'readAs'>;
  readonly definition: string;
}): string {
  const { text = null, sound = null, stretches = null } = readAs;
  const judged = [version, sha256, text, sound, stretches, definition];
  return createHash('sha256').update(JSON.stringify(judged)).digest('hex');
}
