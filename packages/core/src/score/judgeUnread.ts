import type { Check } from './score.js';

/**
 * Whether every row has a reading, or one beyond a known range. A wiper that lifts is what makes an instrument write none: what it would have
 * shown nobody can tell.
 *
 * @param unknown How many rows there are of which nothing is known.
 */
export function judgeUnread(unknown: number): Check {
  return {
    check: 'unread',
    outcome: unknown > 0 ? 'cannot-tell' : 'conforms',
    unit: 'count',
    measured: unknown,
    highLimit: 0,
    margin: 0 - unknown,
    limitFrom: 'criteria',
  };
}
