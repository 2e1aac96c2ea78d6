import type { CheckOutcome, ReadingCheck } from '@truesweep/core';

/** What came of a reading, by its place in the list of readings. */
export function outcomeOf(checks: readonly ReadingCheck[], reading: number): CheckOutcome {
  return checks.find((check) => check.reading === reading)?.outcome ?? 'not-judged';
}
