import type { TextPlace } from '@truesweep/core';

/** A line of which bytes are at hand: its number, counted from 1, and where it begins among them. */
export interface LineStart {
  readonly line: number;
  readonly start: number;
}

/** The place of a byte in a line; columns are characters, counted from 1. */
export function placeInLine(
  bytes: Uint8Array,
  { line, start }: LineStart,
  index: number,
): TextPlace {
  return { line, column: characters(bytes, start, index) + 1 };
}

/** Counts characters: every byte but the later ones of a UTF-8 sequence begins one. */
function characters(bytes: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let at = from; at < to; at++) if ((bytes[at]! & 0xc0) !== 0x80) count += 1;
  return count;
}
