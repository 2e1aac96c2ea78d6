import { checkBytes } from '../shown.js';

/** Of a text's bytes so many are printable; of what is read at a wrong rate about a third. */
const textPart = 0.9;

/**
 * Tells of bytes as they come whether all of them so far are text, as what comes from a serial line at a wrong rate is not.
 *
 * @returns Takes the next bytes; whether nine in ten of all of them are printable.
 *
 * @example
 * isTextOf()(Uint8Array.of(0x80, 0xf8, 0x31)) // => false
 */
export function isTextOf(): (bytes: Uint8Array) => boolean {
  let all = 0;
  let printable = 0;
  return (bytes) => {
    checkBytes(bytes, 'bytes');
    all += bytes.length;
    for (const byte of bytes) if (isPrintable(byte)) printable += 1;
    return printable >= textPart * all;
  };
}

/** Letters of the common 8-bit codes and of UTF-8 beyond ASCII stand in few headings only. */
function isPrintable(byte: number): boolean {
  return (byte >= 0x20 && byte < 0x7f) || byte === 0x0a || byte === 0x0d || byte === 0x09;
}
