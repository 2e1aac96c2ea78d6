import { InputError } from '@truesweep/core';
import { type DelimitedOptions, liveReader } from '@truesweep/recordings';
import { isTextOf } from './isTextOf.js';

/** So many rows at a rate are no chance. */
const enoughRows = 12;
/** So many bytes tell whether they are text at all. */
const tellingBytes = 64;

/**
 * Tells whether the bytes that come at a rate are lines of a recorder.
 *
 * @returns Takes the next bytes; whether the rate is right, undefined while too little came.
 */
export function rateFinder(options: DelimitedOptions): (bytes: Uint8Array) => boolean | undefined {
  const reader = liveReader(options, true);
  const isText = isTextOf();
  let all = 0;
  return (bytes) => {
    all += bytes.length;
    const isSoFar = isText(bytes);
    if (all < tellingBytes) return undefined;
    if (!isSoFar) return false;
    try {
      reader.feed(bytes);
    } catch (error) {
      // Rows that only lack a scale, or a choice of columns, are rows.
      if (error instanceof InputError) return true;
      throw error;
    }
    const { rows, damagedLines } = reader.reading();
    return rows >= enoughRows && rows > damagedLines ? true : undefined;
  };
}
