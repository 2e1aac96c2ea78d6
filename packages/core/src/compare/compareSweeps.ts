import { InputError } from '../errors.js';
import { checkScore } from '../score/checkScore.js';
import type { Score } from '../score/score.js';
import { compareSpots } from './compareSpots.js';
import type { EndChange, SweepComparison } from './comparison.js';
import { matchSpots } from './matchSpots.js';
import { type RecordingLimits, recordingLimits } from './recordingLimits.js';
import { spotTraits } from './spotTraits.js';

/**
 * Compares two sweeps of one sensor, such as before and after cleaning: which spots appeared, vanished, grew, shrank
 * or stayed, how the readings at the stops changed, and what became of the verdict.
 *
 * Spots are matched by kind and by travel, 3 % apart at most. A spot has grown or shrunk where its depth, a fraction
 * of the span, changed by more than twice the standard uncertainty of the change and by more than either recording
 * could make visible. What the other recording could not have shown has not vanished; what it could have shown bears
 * the probability that all its passes missed it by chance ({@link chanceAllMissed}).
 *
 * @param before The score of the earlier sweep.
 * @param after The score of the later one, on the same hook-up or on another.
 * @throws InputError `missing` where one is no score.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const score = scoreSweep({ time, signal: new Float64Array(100).fill(2.5) }, expectation(circuit));
 * compareSweeps(score, score).verdict // => { before: 'fail', after: 'fail' }
 */
export function compareSweeps(before: Score, after: Score): SweepComparison {
  const limits = { before: limitsOf(before, 'before'), after: limitsOf(after, 'after') };
  const spots = matchSpots(spotTraits(before), spotTraits(after))
    .map((match) => compareSpots(match, limits))
    .sort((a, b) => (a.before ?? a.after)!.travel - (b.before ?? b.after)!.travel);
  const closed = endChange('closed-end', before, after);
  const open = endChange('open-end', before, after);
  return {
    verdict: { before: before.verdict, after: after.verdict },
    spots,
    outsideSpots: { before: outsideSpots(before), after: outsideSpots(after) },
    ...(closed && { closed }),
    ...(open && { open }),
  };
}

function outsideSpots({ findings, spots }: Score): number {
  const inSpots = new Set(spots.flatMap((spot) => spot.findings));
  return findings.filter((_, i) => !inSpots.has(i)).length;
}

function endChange(
  end: 'closed-end' | 'open-end',
  before: Score,
  after: Score,
): EndChange | undefined {
  const [first, second] = [before, after].map(({ checks }) =>
    checks.find(({ check }) => check === end),
  );
  if (first?.measured === undefined || second?.measured === undefined) return undefined;
  const change = second.measured - first.measured;
  const uncertainty = Math.hypot(first.uncertainty ?? 0, second.uncertainty ?? 0);
  return {
    before: first.measured,
    after: second.measured,
    change,
    uncertainty,
    significant: Math.abs(change) > 2 * uncertainty,
  };
}

/** Refuses what is no score, or one with spots but without the check that says how deep they are in the span. */
function limitsOf(score: Score, path: string): RecordingLimits {
  checkScore(score, path);
  const limits = recordingLimits(score);
  if (score.spots.length === 0 || limits.visible < Infinity) return limits;
  const at = `${path}.checks`;
  throw new InputError(
    'missing',
    at,
    `${at} lacks a measured “visible-departure”; spots are compared by it.`,
  );
}
