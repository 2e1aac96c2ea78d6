import type { Seconds } from '../units.js';
import type { Levels } from './levels.js';
import { handAcceleration, shortestSpring } from './mechanics.js';
import type { Piece } from './pieces.js';

/** What the path does between two pieces that lie on it. */
export interface Passage {
  /** The piece before and the piece after; none at either end of the recording. */
  readonly before: Piece | undefined;
  readonly after: Piece | undefined;
  /** Whether the path itself jumps here. */
  readonly jumps: boolean;
  /** Whether pieces between the two lie off the path. */
  readonly leaves: boolean;
}

/** Costs in units of one excursion: what is rarer, or longer, costs more. */
const jumpCost = 1.5;
const excursionCost = 1;
/** Of an excursion's time off the path, per second: less beyond the stops, little at the level of a lifted wiper. */
const timeCost = 8;
const timeCostBeyond = 4;
const timeCostAtRest = 0.3;
/** How many pieces an excursion can hold. */
const lookback = 400;
/** Speed of a hand that a piece too short to tell may have, spans per second. */
const unknownSpeed = 2.5;
/** A level this far beyond the stops is no position of the throttle. */
const beyondStops = 0.15;
/** The throttle lies still at its stop for at least this long after a spring closed it. */
const stillness: Seconds = 0.06;
const atStop = 0.04;

/**
 * Tells which pieces of a recording lie on the path that the throttle drew: the choice that needs the fewest and
 * shortest excursions and the fewest jumps.
 *
 * Method: dynamic programming over the pieces (R. Bellman, Dynamic Programming, 1957; from memory).
 *
 * @param closed Level of the closed stop.
 * @returns The passages from piece to piece of the path at which it jumps or something lies off it.
 */
export function likelyPath(
  levels: Levels,
  pieces: readonly Piece[],
  closed: number,
): readonly Passage[] {
  const offTime = new Float64Array(pieces.length + 1);
  for (const [i, piece] of pieces.entries()) offTime[i + 1] = offTime[i]! + offCost(levels, piece);
  const skipCost = (from: number, to: number): number =>
    from >= to ? 0 : excursionCost + offTime[to]! - offTime[from]!;
  const costs = new Float64Array(pieces.length);
  const previous = new Int32Array(pieces.length);
  for (let j = 0; j < pieces.length; j++) {
    costs[j] = skipCost(0, j);
    previous[j] = -1;
    for (let i = j - 1; i >= Math.max(0, j - lookback); i--) {
      const base = costs[i]! + skipCost(i + 1, j);
      if (base >= costs[j]!) continue;
      const cost = base + (jumps(levels, pieces[i]!, pieces[j]!, closed) ? jumpCost : 0);
      if (cost >= costs[j]!) continue;
      costs[j] = cost;
      previous[j] = i;
    }
  }
  let last = pieces.length - 1;
  let least = Number.POSITIVE_INFINITY;
  for (let j = pieces.length - 1; j >= 0; j--) {
    const cost = costs[j]! + skipCost(j + 1, pieces.length);
    if (cost < least) [least, last] = [cost, j];
  }
  return passagesAlong(levels, pieces, previous, last, closed);
}

function passagesAlong(
  levels: Levels,
  pieces: readonly Piece[],
  previous: Int32Array,
  last: number,
  closed: number,
): readonly Passage[] {
  const passages: Passage[] = [];
  if (last < pieces.length - 1) {
    passages.push({ before: pieces[last], after: undefined, jumps: false, leaves: true });
  }
  for (let j = last; j >= 0; j = previous[j]!) {
    const i = previous[j]!;
    const [before, after] = [pieces[i], pieces[j]!];
    const leaves = i < j - 1 && comesBack(levels, before, after);
    const jump = before !== undefined && jumps(levels, before, after, closed);
    if (leaves || jump) passages.push({ before, after, jumps: jump, leaves });
    else if (before && i < j - 1)
      passages.push(...jumpsBetween(levels, pieces.slice(i, j + 1), closed));
  }
  return passages.reverse();
}

/** A piece between two jumps is one that lasts for this long: shorter ones are edges, or a contact that chatters. */
const betweenJumps: Seconds = 0.03;

/** The jumps from piece to piece of what leads from the first of them to the last. */
function jumpsBetween(
  levels: Levels,
  pieces: readonly Piece[],
  closed: number,
): readonly Passage[] {
  const last = pieces.length - 1;
  const path = pieces.filter(
    ({ from, to }, k) =>
      k === 0 || k === last || levels.time[to]! - levels.time[from]! >= betweenJumps,
  );
  return path
    .slice(1)
    .map((after, k) => ({ before: path[k]!, after, jumps: true, leaves: false }))
    .filter(({ before, after }) => jumps(levels, before, after, closed))
    .reverse();
}

/** Whether what lies between two pieces left them and came back, and did not lead from one to the other. */
function comesBack({ mean, visible }: Levels, before: Piece | undefined, after: Piece): boolean {
  if (!before) return true;
  let [low, high] = [Infinity, -Infinity];
  for (let i = before.to + 1; i < after.from; i++) {
    low = Math.min(low, mean[i]!);
    high = Math.max(high, mean[i]!);
  }
  const [start, end] = [before.end.level, after.start.level];
  return Math.min(start, end) - low > visible / 2 || high - Math.max(start, end) > visible / 2;
}

function offCost({ time, interval, rest, visible }: Levels, piece: Piece): number {
  const { from, to, level, start, end } = piece;
  const near = Math.max(visible, 0.01);
  const isNear = (here: number, within: number): boolean => Math.abs(here - rest!) < within;
  // A piece that moves may have its mean there by chance.
  const atRest =
    rest !== undefined &&
    isNear(level, near) &&
    isNear(start.level, 2 * near) &&
    isNear(end.level, 2 * near);
  const isBeyond = level < -beyondStops || level > 1 + beyondStops;
  const cost = atRest ? timeCostAtRest : isBeyond ? timeCostBeyond : timeCost;
  return cost * (time[to]! - time[from]! + interval);
}

/** Whether no hand's movement, nor a spring that a slow recording missed, leads from one piece to the next. */
function jumps({ time, visible }: Levels, before: Piece, after: Piece, closed: number): boolean {
  const seconds = time[after.from]! - time[before.to]!;
  const change = after.start.level - before.end.level;
  const speeds = [before.end.speed, after.start.speed];
  const slowest = Math.min(...speeds.map((speed) => speed ?? -unknownSpeed));
  const fastest = Math.max(...speeds.map((speed) => speed ?? unknownSpeed));
  const scatter =
    Math.hypot(before.end.levelScatter, after.start.levelScatter) +
    2 * seconds * Math.max(before.end.speedScatter, after.start.speedScatter);
  const free = visible + scatter + (handAcceleration * seconds * seconds) / 8;
  if (change >= slowest * seconds - free && change <= fastest * seconds + free) return false;
  const settles = time[after.to]! - time[after.from]! >= stillness;
  const springClosed =
    change < 0 &&
    seconds >= shortestSpring &&
    settles &&
    Math.abs(after.start.level - closed) < Math.max(atStop, visible);
  return !springClosed;
}
