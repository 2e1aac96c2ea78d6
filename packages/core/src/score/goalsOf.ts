import type { Departure } from '../departures/departure.js';
import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import type { Contact, Goal, Goals } from './contactEvent.js';
import type { Finding } from './score.js';

/** A broken contact's signal comes this near to its level, as a part of the way there. */
export const nearLevel = 0.08;

/** Which broken contacts a departure may come from, by the levels that each leaves the signal at. */
export function goalsOf(
  { from, to, depth, bothWays }: Departure,
  { kind }: Finding,
  { time, rest, visible }: Levels,
  path: Float64Array,
  { brokenLead }: HookUpLevels,
  scale: ThrottleScale,
): Goals {
  if ((kind !== 'dropout' && kind !== 'spike') || bothWays) return {};
  const level = path[firstAt(time, (time[from]! + time[to]!) / 2)]!;
  const along = Math.min(1, Math.max(0, level));
  const broken = (lead: 'supply' | 'ground'): number | undefined => {
    const ends = brokenLead[lead];
    return ends && onScale(scale, ends.closed + (ends.open - ends.closed) * along);
  };
  const goals: { [contact in Contact]?: Goal } = {};
  for (const [contact, goal] of [
    ['wiper', rest],
    ['supply', broken('supply')],
    ['ground', broken('ground')],
  ] as const) {
    if (goal === undefined) continue;
    const way = goal - level;
    const slack = Math.max(visible, nearLevel * Math.abs(way));
    if (way * depth <= 0 || Math.abs(depth) > Math.abs(way) + slack) continue;
    goals[contact] = { part: depth / way, slack, isFull: Math.abs(way - depth) <= slack };
  }
  return goals;
}
