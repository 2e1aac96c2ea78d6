import type { Departure } from '../departures/departure.js';
import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import type { Levels } from '../movement/levels.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import { nearLevel } from './goalsOf.js';
import type { Finding } from './score.js';

/**
 * Which known level a departure went to. What goes beyond the load's rest level, to the one of a broken supply or ground
 * lead, is no dropout but a spike: the wiper was in contact.
 *
 * @param level Of the path, in the departure's middle.
 */
export function levelReached(
  departure: Departure,
  level: number,
  levels: Levels,
  hookUp: HookUpLevels,
  scale: ThrottleScale,
): Pick<Finding, 'kind' | 'went'> {
  const { kind, depth } = departure;
  const { rest, visible } = levels;
  if (kind !== 'dropout' && kind !== 'spike') return { kind, went: 'elsewhere' };
  const broken = brokenLevels(level, hookUp, scale);
  const farthest = farthestMean(departure, levels);
  const isFed = (goal: number, from: number): boolean =>
    Math.abs(goal - from) >= visible &&
    (goal - from) * depth > 0 &&
    Math.abs(farthest - goal) <=
      Math.min(Math.abs(farthest - from), nearLevel * Math.abs(goal - level));
  const goesBeyond = rest !== undefined && broken.some((goal) => isFed(goal, rest));
  if (kind === 'dropout' && goesBeyond) return { kind: 'spike', went: 'to-broken-lead-level' };
  const reaches = (goal: number): boolean =>
    Math.sign(goal - level) === Math.sign(depth) &&
    Math.abs(goal - level - depth) <= Math.max(visible, nearLevel * Math.abs(goal - level));
  const goesToRest = kind === 'dropout' && rest !== undefined;
  if (goesToRest && reaches(rest)) return { kind, went: 'to-rest-level' };
  if (broken.some(reaches)) return { kind, went: 'to-broken-lead-level' };
  return { kind, went: goesToRest ? 'toward-rest-level' : 'elsewhere' };
}

/** The levels that the signal goes to from a level of the path where the supply or the ground lead is broken. */
function brokenLevels(
  level: number,
  { brokenLead }: HookUpLevels,
  scale: ThrottleScale,
): readonly number[] {
  const broken = [brokenLead.supply, brokenLead.ground].filter((ends) => ends !== undefined);
  const along = Math.min(1, Math.max(0, level));
  return broken.map(({ closed, open }) => onScale(scale, closed + (open - closed) * along));
}

/** The level that a departure came to: the depth alone is from where the path was then. */
function farthestMean({ from, to, depth }: Departure, { mean }: Levels): number {
  const farther = depth > 0 ? Math.max : Math.min;
  return mean.subarray(from, to + 1).reduce((most, one) => farther(most, one));
}
