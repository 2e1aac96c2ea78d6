import { crc16 } from './crc16.js';

const asterisk = 0x2a;
const lineFeed = 0x0a;
const carriageReturn = 0x0d;
/** The asterisk and four hexadecimal digits. */
const length = 5;

/**
 * Where the content of a line ends whose last five bytes are its check: an asterisk and, in four hexadecimal digits, the CRC-16 of all bytes before
 * it. −1 where there is no check, or where it does not fit.
 *
 * @param end The end of the line, without its line end.
 */
export function checkedEnd(bytes: Uint8Array, start: number, end: number): number {
  const content = end - length;
  if (content < start || bytes[content] !== asterisk) return -1;
  let told = 0;
  for (let at = content + 1; at < end; at++) {
    const digit = hexDigit(bytes[at]!);
    if (digit < 0) return -1;
    told = 16 * told + digit;
  }
  return told === crc16(bytes, start, content) ? content : -1;
}

/** The end of a line without its line end, of which there may be none. */
export function contentEnd(bytes: Uint8Array, start: number, next: number): number {
  let end = next;
  if (end > start && bytes[end - 1] === lineFeed) end -= 1;
  if (end > start && bytes[end - 1] === carriageReturn) end -= 1;
  return end;
}

/** Where the line after the one that begins here begins. */
export function nextLine(bytes: Uint8Array, start: number): number {
  for (let at = start; at < bytes.length; at++) {
    if (bytes[at] === lineFeed) return at + 1;
    if (bytes[at] === carriageReturn) return bytes[at + 1] === lineFeed ? at + 2 : at + 1;
  }
  return bytes.length;
}

function hexDigit(byte: number): number {
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30;
  const letter = byte | 0x20;
  return letter >= 0x61 && letter <= 0x66 ? letter - 0x57 : -1;
}
