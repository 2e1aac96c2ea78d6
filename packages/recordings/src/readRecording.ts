import type { DelimitedOptions } from './delimitedOptions.js';
import { type DelimitedRecording, delimitedReader } from './delimitedReader.js';
import { piecesOf, type RecordingSource, sizeOf } from './piecesOf.js';

/**
 * Reads a recorded sweep from a file that comes in pieces, as {@link readDelimited} reads a whole one: the memory that it takes is that of
 * the samples, not of the text.
 *
 * @throws InputError as {@link readDelimited} does; the source's own errors as they are.
 *
 * @example
 * const file = new Blob(['time (ms),signal (V)\n0,0.512\n1500,0.518\n']);
 * const { sweep } = await readRecording(file, { name: 'idle.csv' });
 * sweep.time[1] // => 1.5
 */
export async function readRecording(
  source: RecordingSource,
  options: DelimitedOptions = {},
): Promise<DelimitedRecording> {
  const reader = delimitedReader(options, sizeOf(source));
  for await (const piece of piecesOf(source)) reader.feed(piece);
  return reader.end();
}
