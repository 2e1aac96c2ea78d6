import type { Criteria } from '../criteria.js';
import type { Check, Finding } from './score.js';
import type { Explanation } from './weighCauses.js';

/**
 * No departure conforms. Departures of a track or a connection that repeat or are deep fail, a shallow one alone is
 * marginal, and so is interference alone, which never fails a sensor. Which of them are whose is taken from the
 * heaviest explanation.
 */
export function judgeDepartures(
  findings: readonly Finding[],
  explanation: Explanation | undefined,
  criteria: Criteria,
): Check {
  const base = { check: 'departures', unit: 'count', highLimit: 0, limitFrom: 'criteria' } as const;
  const measured = findings.length;
  const own = findings.filter((_, i) => !explanation?.foreign.has(i));
  const deep = own.some(({ depthOfSpan }) => depthOfSpan >= criteria.deepDeparture);
  const outcome = measured === 0 ? 'conforms' : deep || own.length > 1 ? 'fails' : 'marginal';
  return { ...base, outcome, measured, margin: 0 - measured };
}
