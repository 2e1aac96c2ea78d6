import type { Expectation } from '../expectation/expectation.js';
import type { Movement } from '../movement/followThrottle.js';
import { type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Travel } from '../units.js';
import type { Score } from './score.js';

/** What the throttle did, told in travel: a level is a fraction of the voltage span, which a load bends. */
export function inTravel(
  { strokes, rests, snaps, stops }: Pick<Movement, 'strokes' | 'rests' | 'snaps' | 'stops'>,
  expected: Expectation,
  scale: ThrottleScale,
): Pick<Score, 'strokes' | 'rests' | 'snaps'> {
  const travelOf = (level: number): Travel => travelAtLevel(expected, scale, stops, level);
  return {
    strokes: strokes.map(({ direction, start, end, from, to }) => ({
      direction,
      start,
      end,
      from: travelOf(from),
      to: travelOf(to),
    })),
    rests: rests.map(({ start, end, level }) => ({
      start,
      end,
      travel: travelOf(level),
      volts: scale.closed + level * scale.span,
    })),
    snaps: snaps.map(({ start, touch, settled, from, rebounds }) => ({
      start,
      touch,
      settled,
      from: travelOf(from),
      rebounds: rebounds.map((height) => travelOf(stops.closed + height)),
    })),
  };
}
