import { InputError, type TextPlace } from '@truesweep/core';
import { placeAt } from './placeAt.js';

const firstPlace: TextPlace = { line: 1, column: 1 };

/**
 * Refuses bytes that are no UTF-8 text: nothing at all, a NUL byte, an impossible sequence.
 *
 * @returns The index of the first byte of text, after a byte order mark.
 */
export function textStart(bytes: Uint8Array, path: string): number {
  const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  if (bytes.length === start) {
    throw new InputError(
      'empty-file',
      path,
      'The file is empty; it must hold rows of time and voltage.',
      firstPlace,
    );
  }
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    throw new InputError(
      'not-utf-8',
      path,
      'The file is UTF-16 text; save it as UTF-8 or plain text.',
      firstPlace,
    );
  }
  checkBytes(bytes, start, path);
  return start;
}

function checkBytes(bytes: Uint8Array, start: number, path: string): void {
  let index = start;
  while (index < bytes.length) {
    const byte = bytes[index]!;
    if (byte === 0) {
      const wrong = 'The file holds a zero byte, so it is no text';
      refuse('binary-file', wrong, bytes, start, index, path);
    }
    const length = byte < 0x80 ? 1 : sequenceLength(bytes, index);
    if (length === 0) {
      const wrong = `The byte 0x${byte.toString(16).toUpperCase()} is not UTF-8 here`;
      refuse('not-utf-8', wrong, bytes, start, index, path);
    }
    index += length;
  }
}

/** The length of a well-formed sequence of several bytes (RFC 3629, section 4), or 0. */
function sequenceLength(bytes: Uint8Array, index: number): number {
  const lead = bytes[index]!;
  const length = lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : lead < 0xf5 ? 4 : 0;
  const second = bytes[index + 1] ?? 0;
  const low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  if (length === 0 || second < low || second > high) return 0;
  for (let next = 2; next < length; next++) {
    if (((bytes[index + next] ?? 0) & 0xc0) !== 0x80) return 0;
  }
  return length;
}

function refuse(
  code: string,
  wrong: string,
  bytes: Uint8Array,
  start: number,
  index: number,
  path: string,
): never {
  throw new InputError(
    code,
    path,
    `${wrong}; export the recording as delimited text in UTF-8.`,
    placeAt(bytes, start, index),
  );
}
