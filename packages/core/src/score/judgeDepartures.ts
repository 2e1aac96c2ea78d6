import type { Criteria } from '../criteria.js';
import type { Check, Finding, Score } from './score.js';

/** No departure conforms; one that is shallow, or interference alone, is marginal; repeated or deep ones fail. */
export function judgeDepartures(
  findings: readonly Finding[],
  causes: Score['causes'],
  criteria: Criteria,
): Check {
  const base = { check: 'departures', unit: 'count', highLimit: 0, limitFrom: 'criteria' } as const;
  const measured = findings.length;
  const deep = findings.some(({ depthOfSpan }) => depthOfSpan >= criteria.deepDeparture);
  const interference = causes[0]?.cause === 'interference';
  const outcome =
    measured === 0 ? 'conforms' : interference || (measured === 1 && !deep) ? 'marginal' : 'fails';
  return { ...base, outcome, measured, margin: 0 - measured };
}
