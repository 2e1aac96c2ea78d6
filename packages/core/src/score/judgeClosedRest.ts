import type { Criteria } from '../criteria.js';
import type { Volts } from '../units.js';
import type { ClosedReturns } from './endReadings.js';
import type { Check } from './score.js';

/**
 * Judges whether the closed reading comes back: the range of at least three returns reached the same way,
 * as a fraction of the span. The way with the wider range counts; scatter that the readings' own uncertainty
 * may have carried over a limit is at most marginal. Where too few returns came near the stop and the rest of them hung
 * above it, or were held there, nothing can be told.
 */
export function judgeClosedRest(
  { ways, hanging }: ClosedReturns,
  readingUncertainty: Volts,
  span: Volts,
  criteria: Criteria,
): Check {
  const highLimit = criteria.closedNormal;
  const base = { check: 'closed-rest', unit: '1', highLimit, limitFrom: 'criteria' } as const;
  const ranges = ways
    .filter((readings) => readings.length >= criteria.returns)
    .map((readings) => (Math.max(...readings) - Math.min(...readings)) / Math.abs(span));
  if (ranges.length === 0) {
    const all = ways.flat().length + hanging;
    const hung = hanging > 0 && all >= criteria.returns;
    return { ...base, outcome: hung ? 'cannot-tell' : 'not-judged' };
  }
  const measured = Math.max(...ranges);
  const uncertainty = (Math.SQRT2 * readingUncertainty) / Math.abs(span);
  const outcome =
    measured <= highLimit
      ? 'conforms'
      : measured - 2 * uncertainty <= criteria.closedMarginal
        ? 'marginal'
        : 'fails';
  return { ...base, outcome, measured, uncertainty, margin: highLimit - measured };
}
