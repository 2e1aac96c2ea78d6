import type { Seconds } from '../units.js';

/** The findings of all stretches that were judged so far. */
export interface FindingsSoFar<Found> {
  /** The latest ones, the oldest of them first. */
  readonly findings: readonly Found[];
  /** How many there were, those no longer kept included. */
  readonly found: number;
}

/** A stretch of the recording that was judged by itself. */
export interface JudgedStretch<Found> {
  readonly start: Seconds;
  readonly end: Seconds;
  /** Whether nothing was recorded before it. */
  readonly first: boolean;
  readonly findings: readonly Found[];
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
export function findingsSoFar<Found extends { readonly start: Seconds }>(): (
  stretch: JudgedStretch<Found>,
) => FindingsSoFar<Found> {
  let settled: readonly Found[] = [];
  let count = 0;
  let previous: JudgedStretch<Found> | undefined;
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
