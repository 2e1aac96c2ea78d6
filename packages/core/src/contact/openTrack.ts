import type { Departure } from '../departures/departure.js';
import type { Levels } from '../movement/levels.js';
import type { ContactLevels } from './contactLevels.js';
import { longestShift, surely, tolerance } from './limits.js';

/** Not fewer leaps tell: once there and back is a loose lead as well. */
const fewestLeaps = 3;

/**
 * The leaps of a track that is open at one place: on its one side the wiper is joined to the ground end alone, as with the supply lead broken,
 * on the other to the supply end alone. The signal then knows two levels and leaps between them wherever the throttle goes, faster
 * than a hand opens one.
 *
 * @returns A step for each leap; nothing where a reading lies elsewhere for longer than a leap takes, or where the two levels may be those
 * of a throttle that was only ever recorded at its stops.
 */
export function openTrackLeaps(
  levels: Levels,
  { rest, supply, ground, range }: ContactLevels,
): readonly Departure[] | undefined {
  const { mean, time, visible } = levels;
  const slack = visible + tolerance * range;
  const sides = [supply, ground].map((level) => {
    const [closed, open] = level ? [level(0), level(1)] : [rest ?? Number.NaN, rest ?? Number.NaN];
    return { low: Math.min(closed, open) - slack, high: Math.max(closed, open) + slack };
  });
  const [below, above] = sides.sort((one, other) => one.low - other.low) as [Side, Side];
  const isBeyondStops = below.high < 0 || above.low > 1;
  if (!(below.high < above.low) || !isBeyondStops) return undefined;
  const leaps: Departure[] = [];
  let last = -1;
  for (let bin = 0; bin < mean.length; bin++) {
    if (!isIn(below, mean[bin]!) && !isIn(above, mean[bin]!)) continue;
    if (last >= 0 && time[bin]! - time[last]! > longestShift && bin > last + 1) return undefined;
    const depth = last < 0 ? 0 : mean[bin]! - mean[last]!;
    if (last >= 0 && isIn(below, mean[last]!) !== isIn(below, mean[bin]!))
      leaps.push({ kind: 'step', from: last, to: bin, depth, evidence: surely });
    last = bin;
  }
  if (last < mean.length - 1 && time[mean.length - 1]! - time[Math.max(0, last)]! > longestShift)
    return undefined;
  return leaps.length < fewestLeaps ? undefined : leaps;
}

interface Side {
  readonly low: number;
  readonly high: number;
}

function isIn({ low, high }: Side, level: number): boolean {
  return level >= low && level <= high;
}
