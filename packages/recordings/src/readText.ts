import { InputError, type TextPlace } from '@truesweep/core';
import { placeAt } from './placeAt.js';

/** How a text file is encoded. */
export type TextEncoding = 'utf-8' | 'utf-16' | 'windows-1252';

/** A text as UTF-8: its bytes, the index of the first after a byte order mark, and how it was encoded. */
export interface Text {
  readonly bytes: Uint8Array;
  readonly start: number;
  readonly encoding: TextEncoding;
}

const firstPlace: TextPlace = { line: 1, column: 1 };
/** So many bytes tell UTF-16 without its mark: of digits and signs every second byte is 0. */
const looked = 64;

/**
 * The text of a file: UTF-8; UTF-16 by its byte order mark, or by its zero bytes where it has none; else, where no byte speaks against it,
 * the single-byte code of western Windows, which holds Latin-1's characters. Refuses an empty file and bytes that are no text.
 */
export function readText(input: Uint8Array, path: string): Text {
  const order = utf16Order(input);
  const bytes = order ? recoded(input, `utf-16${order}`) : input;
  const start = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  if (bytes.length === start) {
    throw new InputError(
      'empty-file',
      path,
      'The file is empty; it must hold rows of time and voltage.',
      firstPlace,
    );
  }
  const isUtf8 = checkBytes(bytes, start, path);
  if (order) return { bytes, start, encoding: 'utf-16' };
  if (isUtf8) return { bytes, start, encoding: 'utf-8' };
  return { bytes: recoded(input, 'windows-1252'), start: 0, encoding: 'windows-1252' };
}

function recoded(bytes: Uint8Array, encoding: string): Uint8Array {
  return new TextEncoder().encode(new TextDecoder(encoding).decode(bytes));
}

function utf16Order(bytes: Uint8Array): 'le' | 'be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'be';
  const head = bytes.subarray(0, looked);
  const isZero = (odd: 0 | 1): boolean => head.every((byte, i) => (i % 2 === odd) === (byte === 0));
  if (head.length < 4 || head.length % 2 === 1) return undefined;
  if (isZero(1)) return 'le';
  return isZero(0) ? 'be' : undefined;
}

/** Whether the bytes are UTF-8; refuses control characters, which no text holds. */
function checkBytes(bytes: Uint8Array, start: number, path: string): boolean {
  let isUtf8 = true;
  let index = start;
  while (index < bytes.length) {
    const byte = bytes[index]!;
    if (byte >= 0x20 && byte < 0x80) {
      index++;
      continue;
    }
    if (byte < 0x20 && isControl(byte)) refuse(byte, bytes, start, index, path);
    const length = byte < 0x80 ? 1 : sequenceLength(bytes, index);
    if (length === 0) isUtf8 = false;
    index += length || 1;
  }
  return isUtf8;
}

/** Tab, line feed, vertical tab, form feed, carriage return and escape stand in texts, and what ends one of old. */
function isControl(byte: number): boolean {
  return (byte < 0x09 || byte > 0x0d) && byte !== 0x1a && byte !== 0x1b;
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
  byte: number,
  bytes: Uint8Array,
  start: number,
  index: number,
  path: string,
): never {
  const shown = `0x${byte.toString(16).toUpperCase().padStart(2, '0')}`;
  throw new InputError(
    'binary-file',
    path,
    `The file holds the control byte ${shown}, so it is no text; export the recording as delimited text.`,
    placeAt(bytes, start, index),
  );
}
