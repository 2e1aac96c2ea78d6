import type { Check, Criteria, Expectation, Score } from '@truesweep/core';
import { checkLabels } from '@truesweep/wording';
import { whereWritten } from '../whereWritten.js';
import { whole } from '../whole.js';
import type { Working } from '../working.js';
import { explainCauses } from './explainCauses.js';
import { explainFinding } from './explainFinding.js';
import { explainLimits, type Tolerated } from './explainLimits.js';
import { explainPlace } from './explainPlace.js';
import { explainVisible } from './explainVisible.js';

/** So many findings and places are worked out, the deepest and the most often seen: many more say the same again. */
const most = 3;

/**
 * Why a judged sweep is judged so: the smallest visible departure, each check beside its limits, the deepest findings, the places that were
 * seen most often, and what speaks for each cause.
 *
 * @param score Of `scoreSweep`.
 * @param expected What it was judged against.
 * @param criteria What it was judged by.
 * @returns A working for each; none for a check that nothing was measured for.
 * @throws InputError `missing` for a score that lacks a part.
 *
 * @example
 * import { defaultCriteria, expectation, scoreSweep } from '@truesweep/core';
 *
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const expected = expectation(circuit);
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const score = scoreSweep({ time, signal: new Float64Array(100).fill(2.5) }, expected);
 * explainScore(score, expected, defaultCriteria)[0].title // => 'The smallest departure that counts as visible in this recording'
 */
export function explainScore(
  score: Score,
  expected: Expectation,
  criteria: Criteria,
): readonly Working[] {
  return whole({ score, expected, criteria }, 'score', () => workingsOf(score, expected, criteria));
}

function workingsOf(score: Score, expected: Expectation, criteria: Criteria): readonly Working[] {
  const { closed, open } = expected.windows;
  const span = open.nominal - closed.nominal;
  // What is tolerated at the ends is known; the other checks have rules of their own.
  const toleratedOf = ({ check }: Check): Tolerated | undefined =>
    check === 'closed-end' || check === 'open-end'
      ? { kind: 'end', span, part: criteria.endMarginal }
      : undefined;
  const { quality, checks, findings, spots, explanations = [] } = score;
  const deepest = findings.toSorted((a, b) => b.depthOfSpan - a.depthOfSpan).slice(0, most);
  return whereWritten(
    () => explainVisible(quality, span, criteria),
    ...checks.map((check) => () => explainLimits(check, nameOf(check), toleratedOf(check))),
    ...deepest.map((finding) => () => explainFinding(finding, quality)),
    ...spots.slice(0, most).map((spot) => () => explainPlace(spot, findings, criteria)),
    () => explainCauses(explanations),
  );
}

const nameOf = ({ check }: Check): string => checkLabels[check];
