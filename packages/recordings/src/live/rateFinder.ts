import { InputError } from '@truesweep/core';
import type { DelimitedOptions } from '../delimitedOptions.js';
import { isTextOf } from './isTextOf.js';
import { liveReader } from './liveReader.js';

/** So many rows at a rate are no chance. */
const enoughRows = 12;
/** So many bytes tell whether they are text at all. */
const tellingBytes = 64;

/**
 * Tells whether the bytes that come from a serial line at a rate are lines of a recorder.
 *
 * @param options What is known of the lines beforehand.
 * @returns Takes the next bytes; whether the rate is right, undefined while too little came. Rows that only lack a scale, or a choice of columns, are rows.
 * @throws InputError for an option that is none.
 *
 * @example
 * const isRight = rateFinder({});
 * const lines = Array.from({ length: 20 }, (_, i) => `${i};0.5\n`).join('');
 * isRight(new TextEncoder().encode(lines)) // => true
 */
export function rateFinder(options: DelimitedOptions): (bytes: Uint8Array) => boolean | undefined {
  const reader = liveReader(options, true);
  const isText = isTextOf();
  let all = 0;
  return (bytes) => {
    const isSoFar = isText(bytes);
    all += bytes.length;
    if (all < tellingBytes) return undefined;
    if (!isSoFar) return false;
    try {
      reader.feed(bytes);
    } catch (error) {
      if (error instanceof InputError) return true;
      throw error;
    }
    const { rows, damagedLines } = reader.reading();
    return rows >= enoughRows && rows > damagedLines ? true : undefined;
  };
}
