import type { Criteria } from '../criteria.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Stroke } from '../movement/movement.js';
import type { ThrottleScale } from '../movement/throttleScale.js';
import type { Fraction } from '../units.js';
import { seldom } from './chanceMisconnected.js';
import type { Check } from './score.js';

/** Less movement than this fraction of the span is none. */
const deadRange = 0.05;
/** A whole stroke begins and ends this near the outermost levels, as a part of the range between them. */
const nearEnd = 0.1;

/**
 * Whether the output lives and is that of leads on the right terminals, and whether a whole opening and a whole closing
 * were recorded, in one stroke or in several that overlap: a hand that turns back for a moment has not begun anew. An output that stands still at the closed reading, or in a recording that is too short for a stroke, may be one that
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
  const passes = (direction: Stroke['direction']): number =>
    passesOverAll(
      strokes.filter((one) => one.direction === direction),
      lowest + nearEnd * range,
      highest - nearEnd * range,
    );
  const pairs = Math.min(passes('opening'), passes('closing'));
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

/** How many strokes went over that level, from one to another, that the fewest went over. */
function passesOverAll(strokes: readonly Stroke[], from: number, to: number): number {
  const borders = strokes
    .flatMap((one) => [
      { level: Math.min(one.from, one.to), more: 1 },
      { level: Math.max(one.from, one.to), more: -1 },
    ])
    .sort((a, b) => a.level - b.level);
  let [count, fewest] = [0, Infinity];
  for (const { level, more } of borders) {
    if (level > from) fewest = Math.min(fewest, count);
    if (level >= to) return fewest;
    count += more;
  }
  return 0;
}
