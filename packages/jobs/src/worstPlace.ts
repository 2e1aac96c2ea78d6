import { checkScore, type Score } from '@truesweep/core';
import type { WorstPlace } from './judgedRecording.js';

/**
 * The departure that leads farthest from the path; the first of several.
 *
 * @param score Of which the findings and the spots are looked at.
 * @returns Nothing where nothing departs.
 *
 * @example
 * worstPlace({ findings: [], spots: [] }) // => undefined
 */
export function worstPlace(score: Pick<Score, 'findings' | 'spots'>): WorstPlace | undefined {
  checkScore(score, 'score', ['findings', 'spots']);
  const { findings, spots } = score;
  const deepest = Math.max(...findings.map(({ depthOfSpan }) => depthOfSpan));
  const index = findings.findIndex(({ depthOfSpan }) => depthOfSpan === deepest);
  const worst = findings[index];
  if (!worst) return undefined;
  const { kind, start, travel, unplaced, depth, depthOfSpan } = worst;
  const spot = spots.find((one) => one.findings.includes(index));
  return {
    kind,
    start,
    ...(!unplaced && { travel }),
    depth,
    depthOfSpan,
    ...(spot && { spot: { passes: spot.passes, seen: spot.seen } }),
  };
}
