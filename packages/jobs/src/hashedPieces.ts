import { createHash } from 'node:crypto';
import { checkSource } from './checkInput.js';
import type { RecordingIdentity } from './identifyRecording.js';

/** Pieces of a recording that are read once, and what tells it when that is done. */
export interface HashedPieces {
  /** As they came; each holds until the next is asked for. */
  readonly pieces: AsyncIterable<Uint8Array>;
  /** Size and SHA-256 of what was read so far. */
  readonly identity: () => RecordingIdentity;
}

/**
 * The pieces of a recording with their hash taken as they go by.
 *
 * @example
 * import { filePieces } from '@truesweep/jobs/node';
 * const { pieces, identity } = hashedPieces(filePieces('LICENSE'));
 * for await (const _ of pieces);
 * identity().sha256.length // => 64
 */
export function hashedPieces(source: AsyncIterable<Uint8Array>): HashedPieces {
  checkSource(source);
  const hash = createHash('sha256');
  let bytes = 0;
  async function* passed() {
    for await (const piece of source) {
      hash.update(piece);
      bytes += piece.length;
      yield piece;
    }
  }
  return { pieces: passed(), identity: () => ({ bytes, sha256: hash.copy().digest('hex') }) };
}
