import type { Criteria } from '../criteria.js';
import type { Volts } from '../units.js';
import type { ClosedReturns } from './endReadings.js';
import type { Check } from './score.js';

/**
 * Judges whether the closed reading comes back: the range of the returns as a fraction of the span, those of one way (repeatability) and
 * those of both (hysteresis) alike. A range can only grow: beyond the limit two returns suffice, where the spring brought one of
 * them; two by hand may have stopped short. Within it `criteria.returns` are needed. Scatter that the readings' own uncertainty
 * may have carried over the marginal limit is at most marginal, over the normal one nothing that can be told. Where too few returns came near the stop and the rest of them hung
 * above it, or were held there, nothing can be told. Where it lay before it was first opened counts too where that is nearer to the stop.
 */
export function judgeClosedRest(
  { ways, before, hanging }: ClosedReturns,
  readingUncertainty: Volts,
  span: Volts,
  criteria: Criteria,
): Check {
  const highLimit = criteria.closedNormal;
  const base = { check: 'closed-rest', unit: '1', highLimit, limitFrom: 'criteria' } as const;
  const all = [...ways.flat(), ...(before === undefined ? [] : [before])];
  const [, bySpring] = ways;
  const range = (Math.max(...all) - Math.min(...all)) / Math.abs(span);
  const uncertainty = (Math.SQRT2 * readingUncertainty) / Math.abs(span);
  const enough = all.length >= criteria.returns;
  const isBeyond = range > highLimit && all.length >= 2 && (enough || bySpring.length > 0);
  if (!enough && !isBeyond) {
    const hung = hanging > 0 && all.length + hanging >= criteria.returns;
    return { ...base, outcome: hung ? 'cannot-tell' : 'not-judged' };
  }
  const least = range - 2 * uncertainty;
  const outcome =
    range <= highLimit
      ? 'conforms'
      : least <= highLimit
        ? 'cannot-tell'
        : least <= criteria.closedMarginal
          ? 'marginal'
          : 'fails';
  return { ...base, outcome, measured: range, uncertainty, margin: highLimit - range };
}
