import type { Finding } from '../score/score.js';
import type { Seconds } from '../units.js';

/** The findings of all stretches that were judged so far. */
export interface FindingsSoFar {
  /** The latest ones, the oldest of them first. */
  readonly findings: readonly Finding[];
  /** How many there were, those no longer kept included. */
  readonly found: number;
}

/** A stretch of the recording that was judged by itself. */
export interface JudgedStretch {
  readonly start: Seconds;
  readonly end: Seconds;
  /** Whether nothing was recorded before it. */
  readonly first: boolean;
  readonly findings: readonly Finding[];
}

const mostKept = 100;
/** So near to the beginning of a stretch what went before is missed; the stretch before knows better. */
const edge: Seconds = 0.5;

/**
 * Puts the findings of overlapping stretches together, each finding once: a stretch judged later is believed, but for
 * its very beginning. However long the recording, no more than the latest 100 findings of earlier stretches are kept.
 *
 * @returns A function that takes the next stretch and gives the findings so far.
 */
export function findingsSoFar(): (stretch: JudgedStretch) => FindingsSoFar {
  let settled: readonly Finding[] = [];
  let count = 0;
  let previous: JudgedStretch | undefined;
  return (stretch) => {
    const believed = stretch.first
      ? -Infinity
      : Math.min(stretch.start + edge, previous?.end ?? -Infinity);
    const final = (previous?.findings ?? []).filter(({ start }) => start < believed);
    count += final.length;
    settled = [...settled, ...final].slice(-mostKept);
    const findings = stretch.findings.filter(({ start }) => start >= believed);
    previous = { ...stretch, findings };
    return { findings: [...settled, ...findings], found: count + findings.length };
  };
}
