import { identifyRecording, type RecordingIdentity } from '@truesweep/jobs';
import { hashedPieces } from '@truesweep/jobs/node';
import type { InputBounds } from './inputBounds.js';
import { fileAhead, inputPieces } from './inputPieces.js';
import { readInput } from './readInput.js';

/** An input whose hash is known before it is read: a file is gone through twice, anything else held whole. */
export async function identifiedInput(
  path: string,
  bounds: InputBounds,
): Promise<{ readonly known: RecordingIdentity; readonly pieces: AsyncIterable<Uint8Array> }> {
  if ((await fileAhead(path)).isAgain) {
    const { pieces, identity } = hashedPieces(inputPieces(path, bounds));
    for await (const _ of pieces);
    return { known: identity(), pieces: inputPieces(path, bounds) };
  }
  const content = await readInput(path, bounds);
  return { known: await identifyRecording(content), pieces: onePiece(content) };
}

async function* onePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
