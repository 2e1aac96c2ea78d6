import type { DelimitedOptions } from './delimitedOptions.js';
import { type DelimitedReading, delimitedReader } from './delimitedReader.js';
import { piecesOf, type RecordingSource } from './piecesOf.js';
import type { Samples } from './rowScanner.js';

/**
 * The samples of a recording of any size, a run at a time, in the memory of a few pieces: for a live sweep, or for what looks at
 * each sample once. An error comes with the piece that holds the fault, after the samples before it.
 *
 * @returns How the file was read, when all samples have been given.
 * @throws InputError as {@link readDelimited} does; the source's own errors as they are.
 *
 * @example
 * const file = new Blob(['time (ms),signal (V)\n0,0.512\n1500,0.518\n']);
 * let largest = 0;
 * for await (const { signal } of samplesOf(file)) largest = Math.max(largest, ...signal);
 * largest // => 0.518
 */
export async function* samplesOf(
  source: RecordingSource,
  options: DelimitedOptions = {},
): AsyncGenerator<Samples, DelimitedReading> {
  const reader = delimitedReader(options);
  for await (const piece of piecesOf(source)) {
    reader.feed(piece);
    const samples = reader.take();
    if (samples.time.length > 0 || samples.unread) yield samples;
  }
  const { sweep, second, position, reading } = reader.end();
  const last = { ...sweep, ...(second && { second }), ...(position && { position }) };
  if (last.time.length > 0 || last.unread) yield last;
  return reading;
}
