import { joinedBytes } from './joinedBytes.js';

/**
 * All bytes of a source that gives them in pieces, each of which may be changed once the next is asked for.
 *
 * @param most How many bytes there may be; a source that goes on is let go of there.
 * @param refuse Called at the first byte beyond.
 */
export async function wholeOf(
  pieces: AsyncIterable<Uint8Array>,
  most: number,
  refuse: () => never,
): Promise<Uint8Array<ArrayBuffer>> {
  const kept: Uint8Array[] = [];
  let size = 0;
  for await (const piece of pieces) {
    size += piece.length;
    if (size > most) refuse();
    kept.push(Uint8Array.from(piece));
  }
  return joinedBytes(kept);
}
