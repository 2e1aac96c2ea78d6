import type { Criteria } from '../criteria.js';
import type { Departure } from '../departures/departure.js';
import type { Check, Finding } from './score.js';
import type { Explanation } from './weighCauses.js';

/** A departure alone that exceeds the visible one by less than this factor may still be noise. */
const surely = 1.25;

/**
 * No departure conforms. Departures of a track or a connection that repeat or are deep fail, a shallow one alone is
 * marginal, as is one that just reaches the visible departure, and interference alone, which never fails a sensor.
 * Which of them are whose each explanation says; they fail where those that make them fail have more than even odds.
 * Where there are none for sure, but some that are rather departures than not, nothing can be told.
 *
 * @param doubtful What is rather a departure than none, and not surely.
 * @param visible The visible departure as a fraction of the span.
 */
export function judgeDepartures(
  findings: readonly Finding[],
  explanations: readonly Explanation[],
  doubtful: readonly Departure[],
  visible: number,
  criteria: Criteria,
): Check {
  const base = { check: 'departures', unit: 'count', highLimit: 0, limitFrom: 'criteria' } as const;
  const measured = findings.length;
  const deepFrom = Math.max(criteria.deepDeparture, surely * visible);
  const fails = (foreign: ReadonlySet<number>): boolean => {
    const own = findings.filter((_, i) => !foreign.has(i));
    return own.length > 1 || own.some(({ depthOfSpan }) => depthOfSpan >= deepFrom);
  };
  const odds = explanations.reduce(
    (sum, { foreign, weight }) => sum + (fails(foreign) ? weight : 0),
    0,
  );
  const isClear = doubtful.every(({ depth }) => Math.abs(depth) < surely * visible);
  const ofNone = isClear ? 'conforms' : 'cannot-tell';
  const outcome = measured === 0 ? ofNone : odds > 0.5 ? 'fails' : 'marginal';
  return { ...base, outcome, measured, margin: 0 - measured };
}
