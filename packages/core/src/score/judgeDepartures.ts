import type { Criteria } from '../criteria.js';
import type { Check, Finding } from './score.js';
import type { Explanation } from './weighCauses.js';

/** A departure alone that exceeds the visible one by less than this factor may still be noise. */
const surely = 1.25;

/**
 * No departure conforms. Departures of a track or a connection that repeat or are deep fail, a shallow one alone is
 * marginal, as is one that just reaches the visible departure, and interference alone, which never fails a sensor.
 * Which of them are whose is taken from the heaviest explanation.
 *
 * @param visible The visible departure as a fraction of the span.
 */
export function judgeDepartures(
  findings: readonly Finding[],
  explanation: Explanation | undefined,
  visible: number,
  criteria: Criteria,
): Check {
  const base = { check: 'departures', unit: 'count', highLimit: 0, limitFrom: 'criteria' } as const;
  const measured = findings.length;
  const own = findings.filter((_, i) => !explanation?.foreign.has(i));
  const deepFrom = Math.max(criteria.deepDeparture, surely * visible);
  const deep = own.some(({ depthOfSpan }) => depthOfSpan >= deepFrom);
  const outcome = measured === 0 ? 'conforms' : deep || own.length > 1 ? 'fails' : 'marginal';
  return { ...base, outcome, measured, margin: 0 - measured };
}
