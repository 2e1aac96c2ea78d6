import type { Criteria } from '../criteria.js';
import type { ReadingWindow } from '../expectation/expectedWindows.js';
import { conformance } from '../judgement/conformance.js';
import { outcomeOf } from '../judgement/outcomeOf.js';
import { farthestStop } from '../motion/limits.js';
import type { Volts } from '../units.js';
import type { Check } from './score.js';

/** A reading at a stop: its value with its standard uncertainty, V, and whether the stop was surely reached. */
export interface EndReading {
  readonly volts: Volts;
  readonly uncertainty: Volts;
  /** The instrument's part of it, V. */
  readonly instrument: Volts;
  readonly atStop: boolean;
}

/**
 * Compares an end reading with its window: simple or guarded acceptance of JCGM 106:2012; outside by no more than
 * the larger of 2u and a fraction of the span is marginal. A reading on the inner side of its window proves
 * nothing unless the stop was surely reached and is not a quarter of the span away; in a window narrower than four
 * times the instrument's 2u only a reading far outside can be judged, and in one narrower than four times its own 2u
 * none is marginal.
 *
 * @param inner The direction from this stop to the other on the voltage scale: 1 up, −1 down.
 */
export function judgeEnd(
  check: 'closed-end' | 'open-end',
  reading: EndReading | undefined,
  window: ReadingWindow,
  span: Volts,
  inner: number,
  criteria: Criteria,
): Check {
  const { low, high } = window;
  const limits = {
    lowLimit: low,
    highLimit: high,
    limitFrom: 'expected-window',
  } as const;
  if (!reading) return { check, outcome: 'cannot-tell', unit: 'V', ...limits };
  const { volts, uncertainty, instrument, atStop } = reading;
  const margin = Math.min(volts - low, high - volts);
  const expanded = 2 * uncertainty;
  const tolerated = Math.max(expanded, criteria.endMarginal * Math.abs(span));
  const reached = atStop && margin >= -farthestStop * Math.abs(span);
  const shortOfStop = !reached && (inner > 0 ? volts > high : volts < low);
  const width = high - low;
  // In too narrow a window nothing conforms.
  const guard = criteria.endAcceptance === 'guarded' ? expanded : 0;
  const outcome = shortOfStop
    ? 'cannot-tell'
    : outcomeOf(margin, width, expanded, tolerated, width < 8 * instrument ? Infinity : guard);
  return {
    check,
    outcome,
    unit: 'V',
    measured: volts,
    ...limits,
    uncertainty,
    margin,
    ...(uncertainty > 0 && {
      conformance: conformance(volts, uncertainty, low, high),
    }),
  };
}
