import { InputError, type TextPlace } from '@truesweep/core';

/** How a text file is encoded. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

const firstPlace: TextPlace = { line: 1, column: 1 };
/** So many bytes tell UTF-16 without its mark: of digits and signs every second byte is 0. */
const looked = 64;

/**
 * The encoding of a text whose first bytes these are: UTF-8; UTF-16 by its byte order mark, or by its zero bytes where it has none; else,
 * where a byte speaks against UTF-8, the single-byte code of western Windows, which holds Latin-1's characters. Refuses an empty file.
 *
 * @param isWhole Whether no more bytes follow; else the last character may be cut.
 */
export function findEncoding(head: Uint8Array, isWhole: boolean, path: string): TextEncoding {
  const utf16 = utf16Order(head);
  const start = utf16 ? 2 : markLength(head);
  if (isWhole && head.length <= start) refuseEmpty(path);
  if (utf16) return utf16;
  return isUtf8(head, start, isWhole) ? 'utf-8' : 'windows-1252';
}

/** How many bytes the mark of UTF-8 takes at the start of a text. */
export function markLength(bytes: Uint8Array): 0 | 3 {
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
}

function refuseEmpty(path: string): never {
  throw new InputError(
    'empty-file',
    path,
    'The file is empty; it must hold rows of time and voltage.',
    firstPlace,
  );
}

function utf16Order(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const head = bytes.subarray(0, looked);
  const isZero = (odd: 0 | 1): boolean => head.every((byte, i) => (i % 2 === odd) === (byte === 0));
  if (head.length < 4 || head.length % 2 === 1) return undefined;
  if (isZero(1)) return 'utf-16le';
  return isZero(0) ? 'utf-16be' : undefined;
}

function isUtf8(bytes: Uint8Array, start: number, isWhole: boolean): boolean {
  let index = start;
  while (index < bytes.length) {
    const length = bytes[index]! < 0x80 ? 1 : sequenceLength(bytes, index);
    if (length === 0) return !isWhole && index > bytes.length - 4;
    index += length;
  }
  return true;
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
