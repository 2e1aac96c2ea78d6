import { joinedBytes } from './joinedBytes.js';

const lineFeed = 0x0a;
const carriageReturn = 0x0d;
/** A row longer than this is none, bytes. */
export const longestLine = 65_536;
const nothing = new Uint8Array(0);

/** Cuts bytes that come in pieces into runs of whole lines. */
export interface WholeLines {
  /** Gives the whole lines that these bytes complete, in one run or two: the line begun before by itself, so that the rest needs no copy. */
  next(bytes: Uint8Array): readonly Uint8Array[];
  /** The last line, with a line end where it had none; empty where there is none. */
  rest(): Uint8Array;
}

/**
 * Cuts bytes that come in pieces into runs of whole lines, which end at LF, CR LF or CR.
 *
 * @param refuseEndless Called at a line of more than 64 KB.
 */
export function wholeLines(refuseEndless: () => never): WholeLines {
  let begun: Uint8Array = nothing;
  // Only when the lines before have been read, so that the first fault is the one that is told.
  const check = (): void => {
    if (begun.length > longestLine) refuseEndless();
  };
  return {
    next(bytes) {
      check();
      const runs: Uint8Array[] = [];
      let from = 0;
      if (begun.length > 0) {
        from = firstEnd(bytes);
        const line = joinedBytes([begun, bytes.subarray(0, from)]);
        if (from === bytes.length && lastEnd(line) < line.length) {
          begun = line;
          return [];
        }
        begun = nothing;
        runs.push(line);
      }
      const end = Math.max(lastEnd(bytes), from);
      if (end > from) runs.push(bytes.subarray(from, end));
      // A copy, whatever kind of bytes they are: a Buffer's slice would be none.
      begun = Uint8Array.from(bytes.subarray(end));
      return runs;
    },
    rest() {
      check();
      const last = begun;
      begun = nothing;
      return last.length === 0 ? last : joinedBytes([last, Uint8Array.of(lineFeed)]);
    },
  };
}

/** Where the first line ends, its line end included; the bytes' length where it doesn't. */
function firstEnd(bytes: Uint8Array): number {
  for (let at = 0; at < bytes.length; at++) {
    if (bytes[at] === lineFeed) return at + 1;
    if (bytes[at] === carriageReturn && at + 1 < bytes.length) {
      return bytes[at + 1] === lineFeed ? at + 2 : at + 1;
    }
  }
  return bytes.length;
}

/** Where the last whole line ends, or 0. A CR at the very end may be half a line end. */
export function lastEnd(bytes: Uint8Array): number {
  for (let at = bytes.length - 1; at >= 0; at--) {
    if (bytes[at] === lineFeed) return at + 1;
    if (bytes[at] === carriageReturn && at < bytes.length - 1) return at + 1;
  }
  return 0;
}
