import type { Stretch } from '../capture/sweep.js';
import type { Departure } from '../departures/departure.js';
import { isJump } from '../departures/isJump.js';
import type { Expectation } from '../expectation/expectation.js';
import { firstAt } from '../movement/firstAt.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Seconds, Travel } from '../units.js';
import {
  type ContactEvent,
  type ContactEvidence,
  type Goals,
  longestPulse,
  type Pass,
} from './contactEvent.js';
import { leadShift } from './leadShift.js';
import type { Finding, Spot } from './score.js';
import { findSpots } from './spots.js';

/** The throttle's speed at an event is taken from this long before it to this long after it. */
const speedOver: Seconds = 0.025;

/** What the findings, the passes and the time spent say about where departures come from. */
export function contactEvidence(
  findings: readonly Finding[],
  departures: readonly Departure[],
  levels: Levels,
  path: Float64Array,
  movement: Movement,
  expected: Expectation,
  scale: ThrottleScale,
  stretches: readonly Stretch[],
  sameTravel: Travel,
  goals: readonly Goals[],
): ContactEvidence {
  const { time } = levels;
  const { strokes, rests, snaps, stops } = movement;
  const travelOf = (level: number): number => travelAtLevel(expected, scale, stops, level);
  const passes = strokes.map(({ direction, start, end, from, to }): Pass => {
    const [low, high] = direction === 'opening' ? [from, to] : [to, from];
    const snap = snaps.some((one) => one.start < end && one.touch > start);
    return { low: travelOf(low), high: travelOf(high), snap: snap && direction === 'closing' };
  });
  const events = findings.map((one, i): ContactEvent => {
    const middle = (one.start + one.end) / 2;
    const pass = strokes.findIndex(({ start, end }) => start <= middle && end >= middle);
    const { from, to, depth } = departures[i]!;
    const before = firstAt(time, time[from]! - speedOver);
    const after = firstAt(time, time[to]! + speedOver);
    const seconds = time[after]! - time[before]!;
    return {
      finding: i,
      time: middle,
      travel: one.travel,
      extent: Math.abs(travelOf(path[to]!) - travelOf(path[from]!)),
      speed: seconds > 0 ? Math.abs(path[after]! - path[before]!) / seconds : 0,
      pass: one.during === 'rest' || pass < 0 ? undefined : pass,
      jump: isJump(one.kind),
      ...(one.kind === 'step' && {
        lead: leadShift(departures[i]!, departures, rests, levels, expected, scale),
      }),
      ...(one.kind === 'rough' && { scatter: true }),
      depth: Math.abs(depth),
      goals: goals[i]!,
      ...lasting(one.end - one.start, levels.interval),
      ...doneMeanwhile(stretches, middle),
    };
  });
  const resting = rests.reduce((sum, { start, end }) => sum + end - start, 0);
  const whole = time[time.length - 1]! - time[0]!;
  return {
    events,
    passes,
    sameTravel,
    spent: {
      whole,
      resting,
      flexed: secondsOf(stretches, 'harness-flexed'),
      tapped: secondsOf(stretches, 'housing-tapped'),
    },
  };
}

function doneMeanwhile(
  stretches: readonly Stretch[],
  when: Seconds,
): Pick<ContactEvent, 'stretch'> {
  const kind = stretches.find(({ start, end }) => start <= when && when <= end)?.kind;
  return kind === 'harness-flexed' || kind === 'housing-tapped' ? { stretch: kind } : {};
}

function secondsOf(stretches: readonly Stretch[], wanted: Stretch['kind']): Seconds {
  return stretches.reduce(
    (sum, { kind, start, end }) => sum + (kind === wanted ? end - start : 0),
    0,
  );
}

/** A departure's end are known to an interval each. */
function lasting(seconds: Seconds, interval: Seconds): Pick<ContactEvent, 'long'> {
  if (seconds - interval > longestPulse) return { long: true };
  return seconds + interval <= longestPulse ? { long: false } : {};
}

/** The places at which departures came, the most often seen first. */
export function spotsOf(evidence: ContactEvidence): readonly Spot[] {
  return findSpots(evidence)
    .map(({ travel, events: at, passes: over, seen }) => ({
      travel,
      findings: at.map(({ finding }) => finding),
      passes: over,
      seen,
    }))
    .sort((a, b) => b.seen - a.seen);
}
