import type { Criteria } from '../criteria.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Stroke } from '../movement/movement.js';
import type { ThrottleScale } from '../movement/throttleScale.js';
import type { Fraction } from '../units.js';
import { seldom } from './chanceMisconnected.js';
import type { Check } from './score.js';

/** Less movement than this fraction of the span is none. */
const deadRange = 0.05;
/** A whole stroke covers this much of the span, and begins and ends this near the outermost levels. */
const wholeRange = 0.8;
const nearEnd = 0.1;

/**
 * Whether the output lives and is that of leads on the right terminals, and whether a whole opening and a whole closing
 * were recorded. An output that stands still at the closed reading, or in a recording that is too short for a stroke, may be one that
 * nobody moved.
 *
 * @param misconnected How probable it is that the leads are on wrong terminals.
 * @param isLong Whether the recording could hold a stroke.
 */
export function judgeMovement(
  path: Float64Array,
  strokes: readonly Stroke[],
  { windows }: Expectation,
  scale: ThrottleScale,
  misconnected: Fraction,
  isLong: boolean,
  criteria: Criteria,
): readonly Check[] {
  let lowest = path[0]!;
  let highest = lowest;
  for (const level of path) {
    if (level < lowest) lowest = level;
    if (level > highest) highest = level;
  }
  const range = highest - lowest;
  const volts = scale.closed + ((lowest + highest) / 2) * scale.span;
  const beyond = criteria.endMarginal * Math.abs(scale.span);
  const atClosed = volts >= windows.closed.low - beyond && volts <= windows.closed.high + beyond;
  const isDead = range < deadRange && !atClosed;
  const isSound = range >= deadRange && misconnected < seldom;
  const live: Check = {
    check: 'live-output',
    outcome:
      (isDead || misconnected > 1 - seldom) && isLong
        ? 'fails'
        : isSound
          ? 'conforms'
          : 'cannot-tell',
    unit: '1',
    measured: range,
    lowLimit: deadRange,
    margin: range - deadRange,
    limitFrom: 'criteria',
  };
  const whole = strokes.filter(({ direction, from, to }) => {
    const [low, high] = direction === 'opening' ? [from, to] : [to, from];
    return high - low >= wholeRange && low <= lowest + nearEnd && high >= highest - nearEnd;
  });
  const pairs = Math.min(
    whole.filter(({ direction }) => direction === 'opening').length,
    whole.filter(({ direction }) => direction === 'closing').length,
  );
  return [
    live,
    {
      check: 'whole-strokes',
      outcome: pairs > 0 ? 'conforms' : 'cannot-tell',
      unit: 'count',
      measured: pairs,
      lowLimit: 1,
      margin: pairs - 1,
      limitFrom: 'criteria',
    },
  ];
}
