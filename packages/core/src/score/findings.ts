import type { Departure } from '../departures/departure.js';
import { movementBeside } from '../departures/movementBeside.js';
import type { Expectation } from '../expectation/expectation.js';
import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import { longestPulse } from './contactEvent.js';
import { levelReached } from './levelReached.js';
import type { Finding } from './score.js';
import { type Crossing, stepTravel } from './stepTravel.js';

/**
 * A departure in the units of the recording, with where and during what it happened.
 *
 * @param steps All of the recording's.
 */
export function finding(
  departure: Departure,
  levels: Levels,
  path: Float64Array,
  steps: readonly Crossing[],
  movement: Movement,
  expected: Expectation,
  hookUp: HookUpLevels,
  scale: ThrottleScale,
): Finding {
  const { rests, snaps, strokes, stops } = movement;
  const { from, to, depth } = departure;
  const { time, interval } = levels;
  // A dead spot reaches from the level it held to the one it jumped to; what lasts while the throttle turns round lies at its edges.
  const level = (path[from]! + path[to]!) / 2;
  const { kind, went } = levelReached(departure, level, levels, hookUp, scale);
  const start = time[from]! - interval / 2;
  const end = time[to]! + interval / 2;
  const resting = rests.some((rest) => rest.start <= start && rest.end >= end);
  const snapped = snaps.some((snap) => snap.start <= end && snap.settled >= start);
  const stroke = strokes.find((one) => one.start <= end && one.end >= start);
  const jumped = movementBeside(levels, from, to) < 0 ? 'closing' : 'opening';
  const moved = stroke && (kind === 'step' ? jumped : stroke.direction);
  const travel =
    kind === 'step'
      ? stepTravel(departure, steps, levels, movement, expected, scale)
      : travelAtLevel(expected, scale, stops, level);
  return {
    kind,
    start,
    end,
    travel,
    depth: depth * scale.span,
    depthOfSpan: Math.abs(depth),
    depthOfSource: Math.abs((depth * scale.span) / hookUp.source),
    went,
    // Engines differ in the last digits of a logarithm.
    ...(departure.evidence !== undefined && {
      evidence: Math.round(100 * Math.min(1000, departure.evidence)) / 100,
    }),
    during: snapped ? 'closing' : resting || !moved ? 'rest' : moved,
  };
}

/** A pulse of a foreign voltage that happened to go toward the rest level is a spike like its others, where there are any. */
export function asExplained(one: Finding, isForeign: boolean | undefined): Finding {
  const isLong = one.end - one.start > longestPulse;
  if (!isForeign || one.kind !== 'dropout' || (one.went === 'to-rest-level' && isLong)) return one;
  return { ...one, kind: 'spike', went: 'elsewhere' };
}
