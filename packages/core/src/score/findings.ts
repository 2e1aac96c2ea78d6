import type { Expectation } from '../expectation/expectation.js';
import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import type { Departure } from '../movement/departure.js';
import { firstAt } from '../movement/firstAt.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { onScale, type ThrottleScale, travelAtLevel } from '../movement/throttleScale.js';
import type { Seconds } from '../units.js';
import type { Finding } from './score.js';

/** A departure in the units of the recording, with where and during what it happened. */
export function finding(
  departure: Departure,
  levels: Levels,
  path: Float64Array,
  { rests, snaps, strokes, stops }: Movement,
  expected: Expectation,
  hookUp: HookUpLevels,
  scale: ThrottleScale,
): Finding {
  const { kind, from, to, depth } = departure;
  const { time, interval } = levels;
  const level = path[firstAt(time, (time[from]! + time[to]!) / 2)]!;
  const start = time[from]! - interval / 2;
  const end = time[to]! + interval / 2;
  const resting = rests.some((rest) => rest.start <= start && rest.end >= end);
  const snapped = snaps.some((snap) => snap.start <= end && snap.settled >= start);
  const stroke = strokes.find((one) => one.start <= end && one.end >= start);
  const isClosing = movementBeside(levels, from, to) < 0;
  const jumped = isClosing ? 'closing' : 'opening';
  const moved = stroke && (kind === 'step' ? jumped : stroke.direction);
  const travel =
    kind === 'step'
      ? stepTravel(
          levels.mean[isClosing ? to : from]!,
          isClosing ? -depth : depth,
          expected,
          scale,
          stops,
        )
      : travelAtLevel(expected, scale, stops, level);
  return {
    kind,
    start,
    end,
    travel,
    depth: depth * scale.span,
    depthOfSpan: Math.abs(depth),
    depthOfSource: Math.abs((depth * scale.span) / hookUp.source),
    went: went(departure, level, levels, hookUp, scale),
    during: snapped ? 'closing' : resting || !moved ? 'rest' : moved,
  };
}

/** The throttle's movement is taken over this time before and after a jump. */
const beside: Seconds = 0.03;

function movementBeside({ time, mean }: Levels, from: number, to: number): number {
  const before = mean[from]! - mean[firstAt(time, time[from]! - beside)]!;
  const after = mean[firstAt(time, time[to]! + beside)]! - mean[to]!;
  return before + after;
}

/**
 * Travel of a step. On its closed side the track is what it was; the open stop is read beyond the step, which shifted
 * it, unless it lies nearer to where it is expected with the shift than without.
 *
 * @param level Level on the closed side of the step.
 * @param shift How far the levels beyond it lie off.
 */
function stepTravel(
  level: number,
  shift: number,
  expected: Expectation,
  scale: ThrottleScale,
  { closed, open }: Movement['stops'],
): number {
  const unshifted = Math.abs(open - shift - 1) < Math.abs(open - 1) ? open - shift : open;
  return travelAtLevel(expected, scale, { closed, open: unshifted }, level);
}

/** A broken contact's signal comes this near to its level, as a part of the way there. */
const nearLevel = 0.08;

function went(
  { kind, depth }: Departure,
  level: number,
  { rest, visible }: Levels,
  { brokenLead }: HookUpLevels,
  scale: ThrottleScale,
): Finding['went'] {
  const reaches = (goal: number): boolean =>
    Math.sign(goal - level) === Math.sign(depth) &&
    Math.abs(goal - level - depth) <= Math.max(visible, nearLevel * Math.abs(goal - level));
  if (kind !== 'dropout' && kind !== 'spike') return 'elsewhere';
  if (rest !== undefined && kind === 'dropout' && reaches(rest)) return 'to-rest-level';
  const broken = [brokenLead.supply, brokenLead.ground].filter((ends) => ends !== undefined);
  const along = Math.min(1, Math.max(0, level));
  const isBroken = broken.some(({ closed, open }) =>
    reaches(onScale(scale, closed + (open - closed) * along)),
  );
  if (isBroken) return 'to-broken-lead-level';
  return kind === 'dropout' && rest !== undefined ? 'toward-rest-level' : 'elsewhere';
}

/** A pulse of a foreign voltage that happened to go toward the rest level is a spike like its others. */
export function asExplained(one: Finding, isForeign: boolean | undefined): Finding {
  if (!isForeign || one.kind !== 'dropout' || one.went === 'to-rest-level') return one;
  return { ...one, kind: 'spike', went: 'elsewhere' };
}
