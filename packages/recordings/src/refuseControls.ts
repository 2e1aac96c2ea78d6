import { InputError } from '@truesweep/core';
import { type LineStart, placeInLine } from './placeInLine.js';

/** Refuses the first control character of a line that stands in no text. */
export function refuseControls(
  bytes: Uint8Array,
  line: LineStart,
  end: number,
  path: string,
): void {
  for (let at = line.start; at < end; at++) {
    const byte = bytes[at]!;
    if (!isControl(byte)) continue;
    const shown = `0x${byte.toString(16).toUpperCase().padStart(2, '0')}`;
    throw new InputError(
      'binary-file',
      path,
      `The file holds the control byte ${shown}, so it is no text; export the recording as delimited text.`,
      placeInLine(bytes, line, at),
    );
  }
}

/** Tab, line ends and escape stand in texts, and what ended one of old. */
function isControl(byte: number): boolean {
  return byte < 0x20 && (byte < 0x09 || byte > 0x0d) && byte !== 0x1a && byte !== 0x1b;
}
