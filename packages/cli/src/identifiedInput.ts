import { createHash } from 'node:crypto';
import { identifyRecording, type RecordingIdentity } from '@truesweep/jobs';
import type { InputBounds } from './inputBounds.js';
import { fileAhead, inputPieces } from './inputPieces.js';
import { readInput } from './readInput.js';

/** An input that is read once, and told by its hash when that is done. */
export interface HashedInput {
  /** In pieces that hold until the next is asked for. */
  readonly pieces: AsyncIterable<Uint8Array>;
  /** Size and SHA-256 of what was read so far. */
  readonly identity: () => RecordingIdentity;
}

/** The bytes of an input with their hash taken beside. */
export function hashedInput(pieces: AsyncIterable<Uint8Array>): HashedInput {
  const hash = createHash('sha256');
  let bytes = 0;
  async function* passed() {
    for await (const piece of pieces) {
      hash.update(piece);
      bytes += piece.length;
      yield piece;
    }
  }
  return { pieces: passed(), identity: () => ({ bytes, sha256: hash.copy().digest('hex') }) };
}

/** An input whose hash is known before it is read: a file is gone through twice, anything else held whole. */
export async function identifiedInput(
  path: string,
  bounds: InputBounds,
): Promise<{ readonly known: RecordingIdentity; readonly pieces: AsyncIterable<Uint8Array> }> {
  if ((await fileAhead(path)).isAgain) {
    const { pieces, identity } = hashedInput(inputPieces(path, bounds));
    for await (const _ of pieces);
    return { known: identity(), pieces: inputPieces(path, bounds) };
  }
  const content = await readInput(path, bounds);
  return { known: await identifyRecording(content), pieces: onePiece(content) };
}

async function* onePiece(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
