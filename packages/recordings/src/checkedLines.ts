import { checkedEnd, contentEnd, nextLine } from './lineCheck.js';
import { wholeLines } from './wholeLines.js';

const lineFeed = 0x0a;

/** Takes the checks off lines that come in pieces. */
export interface CheckedLines {
  /** The whole lines that these bytes complete, without their checks; a line whose check does not fit is left empty, so that the others keep their numbers. */
  next(bytes: Uint8Array): Uint8Array;
  /** The last line likewise. */
  rest(): Uint8Array;
  /** How many lines were damaged so far. */
  damaged(): number;
}

/** Takes the checks off lines that come in pieces. */
export function checkedLines(refuseEndless: () => never): CheckedLines {
  const lines = wholeLines(refuseEndless);
  let damaged = 0;
  const without = (runs: readonly Uint8Array[]): Uint8Array => {
    const kept = new Uint8Array(runs.reduce((sum, run) => sum + run.length, 0));
    let length = 0;
    for (const run of runs) {
      for (let start = 0; start < run.length; ) {
        const next = nextLine(run, start);
        const end = contentEnd(run, start, next);
        const content = checkedEnd(run, start, end);
        if (content >= 0) {
          kept.set(run.subarray(start, content), length);
          length += content - start;
        } else if (end > start) damaged += 1;
        kept[length++] = lineFeed;
        start = next;
      }
    }
    return kept.subarray(0, length);
  };
  return {
    next: (bytes) => without(lines.next(bytes)),
    rest: () => without([lines.rest()]),
    damaged: () => damaged,
  };
}

/** So many checks do not fit by chance. */
const noChance = 3;

/** Whether lines carry checks: three of them fit, or more than half of those that are whole and not empty. */
export function carryChecks(bytes: Uint8Array): boolean {
  let [all, fitting] = [0, 0];
  for (let start = 0; start < bytes.length; ) {
    const next = nextLine(bytes, start);
    const end = contentEnd(bytes, start, next);
    if (end > start) {
      all += 1;
      if (checkedEnd(bytes, start, end) >= 0) fitting += 1;
    }
    start = next;
  }
  return fitting >= noChance || 2 * fitting > all;
}
