import { median } from '../statistics/median.js';
import { runningMedian } from '../statistics/runningMedian.js';
import type { Seconds } from '../units.js';
import { findCuts } from './cuts.js';
import type { Departure, Excursion, Span } from './departure.js';
import { findExcursions } from './excursions.js';
import { fastGuide } from './fastGuide.js';
import { type FastMove, findFastMoves } from './fastMoves.js';
import { firstAt } from './firstAt.js';
import { gradualExcursions } from './gradualExcursions.js';
import { joined } from './joined.js';
import { kindByPlace } from './kindByPlace.js';
import { kindOfJump } from './kindOfDeparture.js';
import type { Levels } from './levels.js';
import { likelyPath, type Passage } from './likelyPath.js';
import { unseenHand } from './mechanics.js';
import { piecesBetween } from './pieces.js';
import { softEdge } from './softEdge.js';
import { withoutLoneOutliers } from './withoutLoneOutliers.js';

/**
 * A departure goes beyond the visible one by this part: rounding to whole steps may add one of the three that are visible to it,
 * or take it off. Halfway between what 0.7 of three becomes at the most and what 1.4 of them is at the least. Scatter is many.
 */
const margin = 0.05;

/** The path that the throttle drew, and what left it. */
export interface PathAndDepartures {
  /** Level bin by bin, with a bridge over what left the path. */
  readonly path: Float64Array;
  readonly fastMoves: readonly FastMove[];
  readonly departures: readonly Departure[];
}

/**
 * Finds what mechanics can't do. The recording is cut where it changes faster than a hand; of the pieces those are
 * the path that need the fewest and shortest excursions and jumps. Around the path so bridged, and smoothed over the
 * time in which a hand can't leave it visibly, every sample is compared. Fast moves are found first, on the path that
 * any lasting speed would make; in them the throttle can only go one way and rebound.
 *
 * @param closed Level of the closed stop.
 * @param draft As long as the levels, to work in: a long recording's arrays are large.
 */
export function findDepartures(
  levels: Levels,
  closed: number,
  draft: Float64Array,
): PathAndDepartures {
  draft.set(levels.mean);
  const fastMoves = fastMovesOf(levels, draft, closed).map((move) => touchingEarlier(levels, move));
  const until = fastMoves.map(({ settled }) => lastRebound(levels, settled));
  const fast = new Uint8Array(levels.mean.length);
  for (const [k, { start }] of fastMoves.entries())
    fast.fill(1, Math.max(0, start - 1), until[k]! + 1);
  draft.set(levels.mean);
  const mechanical = { ...levels, mean: fastGuide(levels, draft, fastMoves, until) };
  const cuts = findCuts(mechanical, fast);
  cutReturns(mechanical, cuts);
  const passages = pathThrough(mechanical, cuts, closed);
  const { jumps, soft } = jumpsOf(mechanical, passages);
  const bridged = bridge(levels.time, mechanical.mean, passages);
  const half = Math.max(1, Math.floor(unseenHand(levels.visible) / levels.interval));
  const smooth = (): Float64Array => {
    const path =
      half > 1 ? runningMedian(bridged, half) : withoutLoneOutliers(levels.time, bridged);
    for (let i = 0; i < path.length; i++) if (fast[i]) path[i] = bridged[i]!;
    return path;
  };
  let path = smooth();
  const gradual = gradualExcursions(levels, path, fast).filter(
    (one) => !jumps.some(({ from, to }) => one.from <= to && one.to >= from),
  );
  if (gradual.length > 0) {
    for (const one of gradual) drawLine(levels.time, bridged, one);
    path = smooth();
  }
  const alone = [...jumps.filter(({ from, to }) => !leavesBetween(passages, from, to)), ...soft];
  const apart = (one: Span): boolean =>
    !alone.some(({ from, to }) => one.from <= to + half && one.to >= from - half);
  const left = findExcursions(levels, path, allowance(levels, bridged, fast)).filter(apart);
  const excursions = [...left, ...soft].sort((a, b) => a.from - b.from);
  const departures = [...joined(levels, path, excursions), ...jumps].sort(
    (a, b) => a.from - b.from,
  );
  const named = kindByPlace(levels, path, departures, fast);
  const least = levels.visible * (1 + margin);
  const isSure = ({ kind, depth }: Departure): boolean =>
    kind === 'rough' || Math.abs(depth) >= least;
  return { path, fastMoves, departures: named.filter(isSure) };
}

/** From this interval on a snap's first touch and rebound may be a few samples each. */
const coarse: Seconds = 1.5e-3;

/**
 * The fast moves of the path roughly bridged. To a slow recorder the first touch of a snap with a high rebound reads
 * like an excursion or a step, and the bridge hides the fall: there those of the recording as it is count too.
 */
function fastMovesOf(levels: Levels, draft: Float64Array, closed: number): readonly FastMove[] {
  const roughly = pathThrough(levels, findCuts(levels), closed);
  const bridged = findFastMoves({ ...levels, mean: bridge(levels.time, draft, roughly) });
  if (levels.interval < coarse) return bridged;
  const asItIs = findFastMoves(levels);
  const apart = (one: FastMove, others: readonly FastMove[]): boolean =>
    !others.some(({ start, settled }) => one.start <= settled && one.settled >= start);
  return [...asItIs, ...bridged.filter((one) => apart(one, asItIs))].sort(
    (a, b) => a.start - b.start,
  );
}

/**
 * A slow recorder catches the throttle on its way back from the stop only, which reads like a bin broken in: where the
 * recording before the touch lies nearer to the stop, it had touched already.
 */
function touchingEarlier({ mean, visible }: Levels, move: FastMove): FastMove {
  const sign = move.direction === 'closing' ? 1 : -1;
  const above = (i: number): number => sign * (mean[i]! - move.to);
  let { touch } = move;
  while (touch - 1 > move.start && above(touch - 1) < above(touch) && above(touch - 1) > -visible)
    touch--;
  return { ...move, touch };
}

/** Cuts as well where a sudden edge's gradual return is over, in place: what lies between is a piece of its own. */
function cutReturns(levels: Levels, cuts: Uint8Array): void {
  const edges: number[] = [];
  for (let i = 1; i < cuts.length; i++) if (cuts[i]) edges.push(i);
  for (const edge of edges) {
    const soft = softEdge(levels, edge - 1, edge);
    if (!soft || kindOfJump(levels, edge - 1, edge).kind === 'dead-spot') continue;
    cuts[soft.from] = 1;
    cuts[soft.to + 1] = 1;
  }
}

function pathThrough(levels: Levels, cuts: Uint8Array, closed: number): readonly Passage[] {
  return likelyPath(levels, piecesBetween(levels, cuts), closed);
}

/** The smallest rebounds go on for this long after the last visible one. */
const afterwards: Seconds = 0.02;

function lastRebound({ time }: Levels, settled: number): number {
  return firstAt(time, time[settled]! + afterwards);
}

/** Draws straight lines over what lies off the path, in place. */
function bridge(
  time: Float64Array,
  path: Float64Array,
  passages: readonly Passage[],
): Float64Array {
  for (const { before, after, leaves } of passages) {
    if (!leaves) continue;
    const from = before ? before.to + 1 : 0;
    const to = after ? after.from - 1 : path.length - 1;
    const start = (before?.end ?? after!.start).level;
    const end = (after?.start ?? before!.end).level;
    const [begin, seconds] =
      before && after ? [time[before.to]!, time[after.from]! - time[before.to]!] : [0, Infinity];
    for (let i = from; i <= to; i++) {
      path[i] = start + (end - start) * ((time[i]! - begin) / seconds);
    }
  }
  return path;
}

/** Draws a straight line over a stretch, in place. */
function drawLine(time: Float64Array, path: Float64Array, { from, to }: Span): void {
  const [start, end] = [path[from]!, path[to]!];
  for (let i = from + 1; i < to; i++)
    path[i] = start + (end - start) * ((time[i]! - time[from]!) / (time[to]! - time[from]!));
}

/** Whether the path jumps while something lies off it, which is a departure of its own. */
function leavesBetween(passages: readonly Passage[], from: number, to: number): boolean {
  return passages.some(
    ({ before, after, leaves }) =>
      leaves &&
      before !== undefined &&
      after !== undefined &&
      before.to >= from &&
      after.from <= to,
  );
}

/** Where the path jumps: dead spots, edges with a gradual return, and steps. */
function jumpsOf(
  levels: Levels,
  passages: readonly Passage[],
): { readonly jumps: readonly Departure[]; readonly soft: readonly Excursion[] } {
  const jumps: Departure[] = [];
  const soft: Excursion[] = [];
  for (const { before, after, jumps: isJump } of passages) {
    if (!isJump || !before || !after) continue;
    const { kind, start, stands } = kindOfJump(levels, before.to, after.from);
    const excursion = kind === 'step' ? softEdge(levels, before.to, after.from) : undefined;
    if (excursion) soft.push(excursion);
    else {
      const depth = after.start.level - before.end.level;
      jumps.push({ kind, from: start, to: after.from, depth, stands });
    }
  }
  return { jumps, soft };
}

/** How many neighbours to either side tell how much a slow recording bends by itself. */
const neighbours = 6;
/** Normal deviates go beyond this many of their middle size once in 20,000. */
const ofBends = 6;
/** Where the throttle moves fast, the stamps' own uncertainty counts: this part of the change to the next bin. */
const ofFastChange = 0.3;
/** From this interval on a snap's turns fall between samples, and so much more of the change is open. */
const slow: Seconds = 3e-3;
const ofSlowChange = 0.6;

/**
 * What movement may add to the visible departure in a bin. Between samples farther apart than a hand needs to turn
 * back, the movement itself bends the recording: so many times the middle size of the bends around a place. In a fast
 * move a part of the change from bin to bin.
 */
export function allowance(levels: Levels, path: Float64Array, fast: Uint8Array): (bin: number) => number {
  const part = levels.interval < slow ? ofFastChange : ofSlowChange;
  const level = (i: number, otherwise: number): number => path[i] ?? otherwise;
  const bend = (i: number): number =>
    Math.abs(path[i]! - (level(i - 1, path[i]!) + level(i + 1, path[i]!)) / 2);
  const bends = new Float64Array(2 * neighbours + 1);
  return (i) => {
    const here = path[i]!;
    const before = Math.abs(here - level(i - 1, here));
    const after = Math.abs(here - level(i + 1, here));
    const inFast = fast[i] ? part * Math.max(before, after) : 0;
    if (levels.interval <= unseenHand(levels.visible)) return inFast;
    let count = 0;
    for (let k = Math.max(0, i - neighbours); k <= i + neighbours && k < path.length; k++)
      bends[count++] = bend(k);
    return Math.max(inFast, ofBends * median(bends.subarray(0, count)));
  };
}
