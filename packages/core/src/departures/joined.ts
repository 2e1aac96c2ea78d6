import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import type { Departure, Excursion } from './departure.js';
import { farther } from './farther.js';
import { kindOfExcursion } from './kindOfDeparture.js';

/** Excursions of one passage over a bad place: this close in time and in level. */
const onePassage: Seconds = 0.03;
const onePlace = 0.015;
/** A rough patch scatters both ways for at least this long, and its excursions lie no farther apart than that. */
const shortestRough: Seconds = 0.025;
const roughGap: Seconds = 0.06;
const fewestSwings = 3;
/** It scatters throughout: two bursts of interference lie this part of their time apart. */
const longestGap = 0.6;
/** Its excursions cover this part of its time at the least; pulses are short and far between. */
const leastCovered = 0.2;

/** Takes the excursions of one event together and names each: a rough patch, a dropout or a spike. */
export function joined(
  levels: Levels,
  path: Float64Array,
  excursions: readonly Excursion[],
): readonly Departure[] {
  const patches = roughPatches(levels, path, excursions);
  const events: Departure[] = [];
  const single = excursions.filter(
    (one) => !patches.some(({ from, to }) => one.from <= to && one.to >= from),
  );
  for (const one of single) {
    const level = path[one.from]!;
    const inPatch = patches.some(({ low, high }) => low <= level && level <= high);
    const own = kindOfExcursion(levels, one);
    const isRough = inPatch && (own === 'spike' || !goesToRest([one], levels.rest));
    const kind = isRough ? 'rough' : own;
    const depth = -one.below > one.above ? one.below : one.above;
    const last = events[events.length - 1];
    const isSame =
      last !== undefined &&
      last.kind === kind &&
      levels.time[one.from]! - levels.time[last.to]! <= onePassage &&
      Math.abs(path[last.to]! - level) <= onePlace;
    if (isSame) {
      events[events.length - 1] = {
        ...last,
        to: one.to,
        depth: farther(last.depth, depth),
        evidence: (last.evidence ?? 0) + (one.evidence ?? 0),
      };
    } else {
      const other = Math.min(-one.below, one.above);
      const bothWays = other > levels.visible && other > 0.3 * Math.abs(depth);
      events.push({
        kind,
        from: one.from,
        to: one.to,
        depth,
        ...(bothWays && { bothWays }),
        ...(one.evidence !== undefined && { evidence: one.evidence }),
      });
    }
  }
  const rough = patches.map(
    ({ from, to, depth }): Departure => ({ kind: 'rough', from, to, depth }),
  );
  return [...events, ...rough].sort((a, b) => a.from - b.from);
}

interface RoughPatch {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** The levels that it covers. */
  readonly low: number;
  readonly high: number;
}

/** Runs of excursions to both sides while the throttle moves. */
function roughPatches(
  { time, interval, rest }: Levels,
  path: Float64Array,
  excursions: readonly Excursion[],
): readonly RoughPatch[] {
  const patches: RoughPatch[] = [];
  let first = 0;
  for (let i = 1; i <= excursions.length; i++) {
    const previous = excursions[i - 1]!;
    const next = excursions[i];
    if (next && time[next.from]! - time[previous.to]! <= roughGap) continue;
    const run = excursions.slice(first, i);
    first = i;
    const from = run[0]!.from;
    const to = previous.to;
    if (time[to]! - time[from]! + interval < shortestRough || swingsOf(run) < fewestSwings)
      continue;
    const covered_ = run.reduce((sum, one) => sum + time[one.to]! - time[one.from]! + interval, 0);
    if (covered_ < leastCovered * (time[to]! - time[from]! + interval)) continue;
    const gaps = run.slice(1).map((one, k) => time[one.from]! - time[run[k]!.to]!);
    if (Math.max(0, ...gaps) > longestGap * (time[to]! - time[from]!)) continue;
    if (goesToRest(run, rest) || lesserSide(run) < evenness) continue;
    const covered = path.subarray(from, to + 1);
    const low = covered.reduce((least, level) => Math.min(least, level));
    const high = covered.reduce((most, level) => Math.max(most, level));
    const depth = run.reduce((most, { below, above }) => farther(farther(most, below), above), 0);
    patches.push({ from, to, depth, low, high });
  }
  return patches;
}

/** This part of the way short of the rest level, or beyond it, counts as there. */
const nearRest = 0.2;
/** Of what goes toward it the other way may have this part. */
const mostAway = 0.6;
/** Scatter leaves the path to one side at least this part as far as to the other; what a contact does goes one way. */
const evenness = 0.25;

/**
 * A contact that chatters goes to the load's rest level, and hardly the other way; scatter has no such level.
 */
function goesToRest(run: readonly Excursion[], rest: number | undefined): boolean {
  if (rest === undefined) return false;
  const reached = run.filter(({ below, above, level }) => {
    const toward = rest < level ? below : above;
    return Math.abs(level + toward - rest) < nearRest * Math.abs(rest - level);
  });
  const toward = run.reduce(
    (sum, { below, above, level }) => sum + (rest < level ? -below : above),
    0,
  );
  const away = run.reduce(
    (sum, { below, above, level }) => sum + (rest < level ? above : -below),
    0,
  );
  return reached.length > 0 && away < mostAway * toward;
}

/** How far some excursions together go to the lesser side, as a part of the other. */
function lesserSide(run: readonly Excursion[]): number {
  const below = run.reduce((sum, one) => sum - one.below, 0);
  const above = run.reduce((sum, one) => sum + one.above, 0);
  return Math.min(below, above) / Math.max(below, above);
}

/** How often a run of excursions changes sides. */
function swingsOf(run: readonly Excursion[]): number {
  let swings = 0;
  let side = 0;
  for (const { below, above, swings: within } of run) {
    swings += within;
    const own = -below > above ? -1 : 1;
    if (side !== 0 && own !== side) swings++;
    side = own;
  }
  return swings;
}
