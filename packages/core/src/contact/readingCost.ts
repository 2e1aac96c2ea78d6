import type { ContactLevels } from './contactLevels.js';
import { catchesUp, dwell, scatter } from './limits.js';

/** What a contact or a lead does that is not sound; shifting is the crossing of a crack, stuck a reading that stays while the throttle moves on. */
export type BrokenState = 'lifted' | 'supply' | 'ground' | 'foreign' | 'shifting' | 'stuck';

/** What a reading of a broken contact is weighed by. */
export interface BrokenReading {
  /** Level of the reading, and of the one before it since the contact broke; NaN for the first. */
  readonly seen: number;
  readonly last: number;
  /** The reading that goes on from the last two as they do, where it is a crack's crossing. */
  readonly ahead: number;
  /** Where the path is taken to be meanwhile. */
  readonly path: number;
  /** Variance of a reading, and the smallest visible departure. */
  readonly variance: number;
  readonly visible: number;
}

/** Of readings that none of the states explains: once in a thousand. */
const strange = 1e-3;
/** A broken contact's reading is near the one before it as often as anywhere else, and the contact open as often as dirty. */
const asOften = 0.5;

/**
 * How unlikely a reading is while a contact is broken: −ln of its density, and what the time costs. At the level that an open contact
 * leaves the signal at it may stay; between there and the path dirt moves it; a foreign voltage may be anywhere for a short time.
 *
 * @param seconds Since the reading before.
 */
export function readingCost(
  state: BrokenState,
  reading: BrokenReading,
  levels: ContactLevels,
  seconds: number,
): number {
  const { seen, last, path, variance, visible } = reading;
  if (state === 'stuck') {
    const [least, most] = last < path ? [last, path] : [path, last];
    const slack = 2 * Math.sqrt(variance);
    const isBetween = seen > least - slack && seen < most + slack;
    const between = isBetween ? catchesUp / (most - least + 2 * slack) : 0;
    const there = (1 - catchesUp) * density(seen - last, variance);
    return -Math.log(strange / levels.range + between + there) + seconds / dwell.dirt;
  }
  const near = nearLast(seen, last, variance);
  if (state === 'shifting') {
    // From 2·last − the one before: the variances of three readings, 1 + 4 + 1.
    const onward = Number.isNaN(reading.ahead) ? 0 : density(seen - reading.ahead, 6 * variance);
    const any = asOften / levels.range;
    return -Math.log(any + (asOften * (near + onward)) / 2) + seconds / dwell.brief;
  }
  if (state === 'foreign')
    return -Math.log(asOften / levels.range + asOften * near) + seconds / dwell.brief;
  const goal = state === 'lifted' ? levels.rest : levels[state]?.(path);
  if (goal === undefined) return Number.POSITIVE_INFINITY;
  const way = Math.abs(goal - path);
  const slack = 2 * Math.sqrt(variance);
  const spread = scatter * way + slack;
  const atAll = strange / levels.range;
  if (Math.abs(seen - goal) < 3 * spread) {
    const there = density(seen - goal, spread * spread);
    return -Math.log(atAll + asOften * there + asOften * near) + seconds / dwell.open;
  }
  const isBetween = seen > Math.min(goal, path) - slack && seen < Math.max(goal, path) + slack;
  // Nearer to the path dirt can't be told from sound contact.
  const between =
    isBetween && Math.abs(seen - path) > visible / 2
      ? asOften * (asOften / (way + 2 * slack) + asOften * near)
      : 0;
  return -Math.log(atAll + between) + seconds / dwell.dirt;
}

function nearLast(seen: number, last: number, variance: number): number {
  if (Number.isNaN(last)) return 0;
  const loose = density(seen - last, scatter * scatter + 4 * variance);
  return (loose + density(seen - last, 2 * variance)) / 2;
}

/** Of the normal distribution. */
function density(deviation: number, variance: number): number {
  return Math.exp((-deviation * deviation) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
}
