import { checkFields } from '@truesweep/core';
import { type DelimitedReader, delimitedReader, isSound } from '@truesweep/recordings';
import { checkBytes, checkSize, checkSource } from './checkInput.js';
import type { Job } from './job.js';
import { jobRecorder } from './jobRecorder.js';
import { joinedBytes } from './joinedBytes.js';
import {
  checkHow,
  type HowRead,
  noted,
  type ReadRecording,
  readSoundAs,
} from './readJobRecording.js';

/** So many bytes tell a sound recording. */
const soundHead = 12;

/**
 * Reads a recording that comes in pieces as its job says, as `readJobRecording` reads a whole one. A text is read in hardly more memory than
 * its samples take, and refused at the first sign that it is none, without reading on; a sound recording, told by its first bytes, is read whole.
 *
 * @param source A stream or any other async iterable of bytes; those that it gave may be changed once the next are asked for.
 * @param recording The file's name, for errors, how it is read, and what was done when.
 * @param options With `size`, the file's size, bytes, 0 or more, room for a text's samples is made at once; as they come when left out.
 * @throws InputError as `readJobRecording` does; the source's own errors as they are.
 *
 * @example
 * const job = parseJob({
 *   version: 3,
 *   title: 'Spare sensor from the shelf',
 *   sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
 *   hookUp: { source: { volts: 5 }, limiter: 1000 },
 *   instrument: { name: 'Bench logger', inputResistance: '10M', resolution: '1 mV' },
 * });
 * async function* pieces() {
 *   for (const piece of ['t (s),U (V)\n0,0', '.5\n1,0.6\n']) yield new TextEncoder().encode(piece);
 * }
 * const { sweep } = await readJobPieces(pieces(), { file: 'a.csv' }, job);
 * sweep.signal[1] // => 0.6
 */
export async function readJobPieces(
  source: AsyncIterable<Uint8Array>,
  recording: HowRead,
  job: Job,
  options: { readonly size?: number } = {},
): Promise<ReadRecording> {
  checkSource(source);
  checkHow(recording);
  checkFields(options, 'options', { 'size?': checkSize });
  const { file, text, stretches } = recording;
  const recorder = jobRecorder(job);
  let reader: DelimitedReader | undefined;
  let held: Uint8Array[] = [];
  let isWhole = false;
  const beginText = (): DelimitedReader => {
    const begun = delimitedReader({ ...text, name: file }, options.size);
    begun.feed(joinedBytes(held));
    held = [];
    return begun;
  };
  for await (const piece of source) {
    checkBytes(piece, 'source');
    if (reader) {
      reader.feed(piece);
      continue;
    }
    held.push(Uint8Array.from(piece));
    if (isWhole) continue;
    const head = joinedBytes(held);
    if (head.length < soundHead) continue;
    isWhole = isSound(head);
    if (!isWhole) reader = beginText();
  }
  if (isWhole) return readSoundAs(joinedBytes(held), recording, job);
  const { sweep, reading } = (reader ?? beginText()).end();
  return { sweep: noted(sweep, stretches), reading, recorder };
}
