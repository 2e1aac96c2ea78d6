import type { TextPlace } from '@truesweep/core';

const lineFeed = 0x0a;
const carriageReturn = 0x0d;

/** Line and column of a byte, counted from 1; columns are characters, and the text begins at `start`. */
export function placeAt(bytes: Uint8Array, start: number, index: number): TextPlace {
  let line = 1;
  let lineStart = start;
  for (let at = start; at < index; at++) {
    const byte = bytes[at];
    if (byte === lineFeed || (byte === carriageReturn && bytes[at + 1] !== lineFeed)) {
      line += 1;
      lineStart = at + 1;
    }
  }
  return { line, column: characters(bytes, lineStart, index) + 1 };
}

/** Counts characters: every byte but the later ones of a UTF-8 sequence begins one. */
function characters(bytes: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let at = from; at < to; at++) if ((bytes[at]! & 0xc0) !== 0x80) count += 1;
  return count;
}
