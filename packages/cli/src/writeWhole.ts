import { writeSync } from 'node:fs';

/** A nearly full disk takes a part of what is written, and refuses only the next. */
export function writeWhole(file: number, bytes: Uint8Array): void {
  for (let from = 0; from < bytes.length; ) from += writeSync(file, bytes, from);
}
