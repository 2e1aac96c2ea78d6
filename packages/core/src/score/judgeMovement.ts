import type { Expectation } from '../expectation/expectation.js';
import type { Stroke } from '../sweep/movement.js';
import type { ThrottleScale } from '../sweep/throttleScale.js';
import type { Check } from './score.js';

/** Less movement than this fraction of the span is none. */
const deadRange = 0.05;
/** A whole stroke covers this much of the span, and begins and ends this near the outermost levels. */
const wholeRange = 0.8;
const nearEnd = 0.1;

/** Whether the output lives, and whether a whole opening and a whole closing were recorded. */
export function judgeMovement(
  path: Float64Array,
  strokes: readonly Stroke[],
  { windows }: Expectation,
  scale: ThrottleScale,
): readonly Check[] {
  let lowest = path[0]!;
  let highest = lowest;
  for (const level of path) {
    if (level < lowest) lowest = level;
    if (level > highest) highest = level;
  }
  const range = highest - lowest;
  const volts = scale.closed + ((lowest + highest) / 2) * scale.span;
  const atEnd = [windows.closed, windows.open].some(
    ({ low, high }) =>
      volts >= low - nearEnd * Math.abs(scale.span) &&
      volts <= high + nearEnd * Math.abs(scale.span),
  );
  const live: Check = {
    check: 'live-output',
    outcome: range >= deadRange ? 'conforms' : atEnd ? 'cannot-tell' : 'fails',
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
