import type { Ratiometric } from '../capture/ratiometric.js';
import type { Criteria } from '../criteria.js';
import type { Check } from './score.js';

/**
 * Judges a recorded supply: the signal was judged as a ratio to it, so its straying is no fault of the track, but of
 * what feeds it. A supply that was missing for longer than a dropout hides what happened meanwhile.
 */
export function judgeSupply(
  { supply, supplyStray, supplyLost = 0 }: Ratiometric,
  criteria: Criteria,
): Check {
  const highLimit = criteria.supplyStray;
  const base = { check: 'supply', unit: '1', highLimit, limitFrom: 'criteria' } as const;
  if (supply !== 'recorded' || supplyStray === undefined) return { ...base, outcome: 'not-judged' };
  const outcome =
    supplyLost > criteria.dropout
      ? 'cannot-tell'
      : supplyStray <= highLimit
        ? 'conforms'
        : 'marginal';
  return { ...base, outcome, measured: supplyStray, margin: highLimit - supplyStray };
}
