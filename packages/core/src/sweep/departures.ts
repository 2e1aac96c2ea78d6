import { runningMedian } from '../statistics/runningMedian.js';
import type { Seconds } from '../units.js';
import { bridged } from './bridged.js';
import { halfWindow } from './captureQuality.js';
import type { Departure } from './departure.js';
import { firstAt } from './firstAt.js';
import type { Levels } from './levels.js';
import type { SnapClosing } from './movement.js';

/** A hand can't accelerate a throttle faster than this, in spans per second squared. */
const handAcceleration = 400;
/** A contact opens and closes within this time; no hand moves anything visible in it. */
const edgeTime: Seconds = 3e-3;
/** A lifted wiper that stays away for longer is no dropout but another level. */
const longestDropout: Seconds = 1;
const joinedWithin: Seconds = 3e-3;
/** A spring closes a throttle in this time at the least and at the most. */
const shortestSpring: Seconds = 0.01;
const longestSpring: Seconds = 0.15;
/** Levels this near the lowest are at the closed stop, as a fraction of the span. */
const atStop = 0.05;

/**
 * Finds what mechanics can't do. First the edges that no hand makes, in pairs (out and back) or alone (a step,
 * a dead spot's jump); then, on the path drawn with those pairs bridged, what leaves it for a short time, and
 * the stretches that scatter. The snap closings and their rebounds are exempt as far as they are what a
 * spring and a stop do.
 */
export function findDepartures(
  levels: Levels,
  snaps: readonly SnapClosing[],
): readonly Departure[] {
  const sudden = edgeDepartures(levels, snaps);
  const onPath = sudden.length > 0 ? pathWithout(levels, sudden) : levels;
  const short = shortDepartures(onPath, snapGuide(onPath, snaps), snaps).filter(
    (one) => !sudden.some((other) => overlap(one, other)),
  );
  const events = [...sudden, ...short];
  const clean = short.length > 0 ? pathWithout(levels, events) : onPath;
  return merged(events, roughPatches(clean, snapGuide(clean, snaps), events));
}

/** The levels with a path that the dropouts and spikes found so far do not bend. */
function pathWithout(levels: Levels, events: readonly Departure[]): Levels {
  const mean = bridged(levels.mean, levels, events);
  const halfWidth = Math.max(1, Math.round(halfWindow / levels.interval));
  return { ...levels, path: runningMedian(mean, halfWidth) };
}

function overlap(one: Departure, other: Departure): boolean {
  return one.from <= other.to + 2 && one.to >= other.from - 2;
}

/** The path, and within a snap the closing itself: falling only, then near closed or on a rebound. */
function snapGuide(levels: Levels, snaps: readonly SnapClosing[]): Float64Array {
  const guide = Float64Array.from(levels.path);
  for (const snap of snaps) {
    const from = firstAt(levels.time, snap.start);
    const touch = firstAt(levels.time, snap.touch);
    const end = firstAt(levels.time, snap.settled + 0.06);
    let lowest = levels.mean[from]!;
    for (let i = from; i < touch; i++) {
      lowest = Math.min(lowest, levels.mean[i]!);
      guide[i] = lowest;
    }
    const closed = levels.path[end]!;
    const highest = Math.max(closed, ...levels.mean.subarray(touch, end + 1));
    for (let i = touch; i <= end; i++) {
      guide[i] = Math.min(highest, Math.max(closed, levels.mean[i]!));
    }
  }
  return guide;
}

function shortDepartures(
  levels: Levels,
  guide: Float64Array,
  snaps: readonly SnapClosing[],
): readonly Departure[] {
  const bridge = Math.max(1, Math.round(joinedWithin / levels.interval));
  const visible = levels.visible * (1 + 1e-9);
  const found: Departure[] = [];
  for (let i = 0; i < guide.length; i++) {
    if (Math.abs(departureAt(levels, guide, i)) <= visible) continue;
    const from = i;
    let to = i;
    let depth = 0;
    for (; i < guide.length && i - to <= bridge; i++) {
      const departure = departureAt(levels, guide, i);
      if (Math.abs(departure) <= visible) continue;
      to = i;
      depth = farthest(depth, departure);
    }
    i = to;
    if (byHand(levels, from, to, depth) || isSnapStart(levels, snaps, from, to)) continue;
    const level = guide[Math.max(0, from - 1)]!;
    found.push({ kind: towardRest(levels, level, depth), from, to, depth });
  }
  return found;
}

/** How far a bin's extremes lie outside what the path covers within the bin. */
function departureAt({ low, high, withinBin }: Levels, guide: Float64Array, i: number): number {
  const here = guide[i]!;
  const before = here + withinBin * (guide[Math.max(0, i - 1)]! - here);
  const after = here + withinBin * (guide[Math.min(guide.length - 1, i + 1)]! - here);
  const below = Math.min(0, low[i]! - Math.min(before, here, after));
  const above = Math.max(0, high[i]! - Math.max(before, here, after));
  return farthest(below, above);
}

/** The running median rounds off the corner where a snap lets go; that is no departure. */
function isSnapStart(
  { time }: Levels,
  snaps: readonly SnapClosing[],
  from: number,
  to: number,
): boolean {
  return snaps.some(
    ({ start }) => time[to]! < start && start - time[from]! < 0.1 && start - time[to]! < 0.06,
  );
}

/** Whether a hand could have made the departure: slow enough out and back, and without a sudden edge. */
function byHand(levels: Levels, from: number, to: number, depth: number): boolean {
  const seconds = (to - from + 2) * levels.interval;
  const acceleration = (16 * Math.abs(depth)) / (seconds * seconds);
  if (acceleration > handAcceleration) return false;
  const reach = Math.max(1, Math.round(edgeTime / levels.interval));
  for (let i = Math.max(0, from - 2 * reach); i <= to + reach; i++) {
    if (Math.abs(suddenChange(levels, i, reach)) > 0.7 * levels.visible) return false;
  }
  return true;
}

/**
 * The change over `reach` bins from bin i beyond what the speeds before and after, and a hand's
 * acceleration, would bring in that time (a gap in the recording makes it long); 0 where they explain it.
 */
function suddenChange({ time, mean }: Levels, i: number, reach: number): number {
  const after = i + reach;
  if (i < 0 || after >= mean.length) return 0;
  const change = mean[after]! - mean[i]!;
  const seconds = time[after]! - time[i]!;
  const speed = (from: number, to: number): number =>
    from < 0 || to >= mean.length
      ? 0
      : ((mean[to]! - mean[from]!) / (time[to]! - time[from]!)) * Math.sign(change);
  const fastest = Math.max(0, speed(i - 2 * reach, i), speed(after, after + 2 * reach));
  const explained = fastest * seconds + (handAcceleration * seconds * seconds) / 2;
  return Math.sign(change) * Math.max(0, Math.abs(change) - explained);
}

/** A departure from a level toward the load's rest level, and not beyond it, is a dropout; any other a spike. */
function towardRest({ rest }: Levels, level: number, depth: number): 'dropout' | 'spike' {
  if (rest === undefined) return 'dropout';
  const away = rest - level;
  const sameWay = Math.sign(away) === Math.sign(depth);
  return sameWay && Math.abs(depth) <= 1.1 * Math.abs(away) + 0.02 ? 'dropout' : 'spike';
}

interface Edge {
  readonly at: number;
  readonly end: number;
  readonly change: number;
}

/** Edges in pairs (out to another level and back onto the path) or alone. */
function edgeDepartures(levels: Levels, snaps: readonly SnapClosing[]): readonly Departure[] {
  const lowest = levels.path.reduce((least, level) => Math.min(least, level));
  const edges = soleEdges(levels)
    .filter((edge) => !mayBeSpring(levels, edge, lowest))
    .filter(
      ({ at, end }) =>
        !snaps.some(
          ({ start, settled }) => levels.time[end]! >= start && levels.time[at]! <= settled,
        ),
    );
  const found: Departure[] = [];
  for (let i = 0; i < edges.length; i++) {
    const out = edges[i]!;
    const back = edges[i + 1];
    if (back && isPair(levels, out, back)) {
      found.push(excursion(levels, out, back));
      i++;
    } else {
      found.push({ kind: loneEdge(levels, out), from: out.at, to: out.end, depth: out.change });
    }
  }
  return found;
}

/**
 * Whether an edge of a slow recording may be a closing by the spring that too few samples show: toward closed, not
 * shorter than a spring needs, and at the closed stop soon after.
 */
function mayBeSpring({ time, path }: Levels, { at, end, change }: Edge, lowest: number): boolean {
  if (change > 0 || time[end]! - time[at]! < shortestSpring) return false;
  const soon = path.subarray(end, firstAt(time, time[end]! + longestSpring) + 1);
  return soon.some((level) => level <= lowest + atStop);
}

/** The bins between two edges that lie nearer the other level than the path, and the farthest of them. */
function excursion(levels: Levels, out: Edge, back: Edge): Departure {
  const { mean } = levels;
  const [start, end] = [mean[out.at]!, mean[back.end]!];
  let from = back.end;
  let to = out.at;
  let depth = 0;
  let level = start;
  for (let i = out.at; i <= back.end; i++) {
    const line = start + ((end - start) * (i - out.at)) / (back.end - out.at);
    const departure = mean[i]! - line;
    if (Math.abs(departure) < Math.abs(out.change) / 2) continue;
    from = Math.min(from, i);
    to = i;
    if (Math.abs(departure) <= Math.abs(depth)) continue;
    depth = departure;
    level = line;
  }
  return { kind: towardRest(levels, level, depth), from, to, depth };
}

/** Runs of sudden changes of one direction; of each run the place where the change is largest. */
function soleEdges(levels: Levels): readonly Edge[] {
  const reach = Math.max(1, Math.round(edgeTime / levels.interval));
  const threshold = levels.visible + 4 * levels.noise;
  const edges: Edge[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i + reach < levels.mean.length; i++) {
    const change = suddenChange(levels, i, reach);
    if (Math.abs(change) <= threshold) continue;
    const edge = { at: i, end: i + reach, change: levels.mean[i + reach]! - levels.mean[i]! };
    const previous = edges[edges.length - 1];
    if (previous && i - last <= reach && Math.sign(previous.change) === Math.sign(change)) {
      if (Math.abs(edge.change) > Math.abs(previous.change)) edges[edges.length - 1] = edge;
    } else edges.push(edge);
    last = i;
  }
  return edges;
}

/**
 * Out and back within the longest dropout, back onto the path that was left, and between the two not moving
 * along with the throttle as another line of the track would.
 */
function isPair({ time, mean, visible }: Levels, out: Edge, back: Edge): boolean {
  if (Math.sign(out.change) === Math.sign(back.change)) return false;
  const seconds = time[back.at]! - time[out.end]!;
  if (seconds > longestDropout) return false;
  const size = Math.min(Math.abs(out.change), Math.abs(back.change));
  const apart = Math.abs(mean[back.end]! - mean[out.at]!);
  if (apart >= Math.max(2 * visible, size / 2)) return false;
  if (seconds < 2 * halfWindow) return true;
  const inside = mean.subarray(out.end, back.at + 1);
  const range = Math.max(...inside) - Math.min(...inside);
  return range <= Math.max(visible, size / 4);
}

/** A jump after a stretch without change is a dead spot, any other a step. */
function loneEdge({ time, path, mean, visible }: Levels, edge: Edge): 'dead-spot' | 'step' {
  const from = firstAt(time, time[edge.at]! - 0.03);
  const earlier = firstAt(time, time[edge.at]! - 0.1);
  const later = Math.min(path.length - 1, firstAt(time, time[edge.end]! + 0.05));
  const flat = Math.abs(mean[edge.at]! - mean[from]!) < visible / 2;
  const moving =
    Math.abs(mean[later]! - mean[edge.end]!) > visible / 2 ||
    Math.abs(mean[from]! - mean[earlier]!) > visible / 2;
  return flat && moving ? 'dead-spot' : 'step';
}

/** Stretches whose departures from the path scatter far more than elsewhere. */
function roughPatches(
  levels: Levels,
  guide: Float64Array,
  events: readonly Departure[],
): readonly Departure[] {
  const { mean, visible, interval, noise } = levels;
  const length = Math.round(0.12 / interval);
  if (length < 12) return [];
  const residuals = mean.map((level, i) => Math.abs(level - guide[i]!));
  for (const { kind, from, to } of events) {
    if (to - from > length / 4 && kind !== 'step') residuals.fill(0, from, to + 1);
  }
  const usual = Math.max(noise, 1.4826 * middle(residuals));
  const patches: Departure[] = [];
  for (let from = 0; from + length <= residuals.length; from += length >> 1) {
    const scatter = 1.4826 * middle(residuals.subarray(from, from + length));
    if (scatter <= Math.max(3 * usual, visible / 2)) continue;
    const depth = residuals
      .subarray(from, from + length)
      .reduce((most, one) => Math.max(most, one), 0);
    if (depth <= visible) continue;
    patches.push({ kind: 'rough', from, to: from + length - 1, depth });
  }
  return patches;
}

function middle(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1]!;
}

/** One event is reported once: rough patches swallow what lies in them and join where they touch. */
function merged(events: readonly Departure[], patches: readonly Departure[]): readonly Departure[] {
  const joined: Departure[] = [];
  for (const patch of patches) {
    const last = joined[joined.length - 1];
    if (last && patch.from <= last.to + 1) {
      joined[joined.length - 1] = {
        ...last,
        to: patch.to,
        depth: Math.max(last.depth, patch.depth),
      };
    } else joined.push(patch);
  }
  const outside = events.filter(
    ({ from, to }) => !joined.some((patch) => from <= patch.to && to >= patch.from),
  );
  return [...outside, ...joined].sort((a, b) => a.from - b.from);
}

function farthest(a: number, b: number): number {
  return Math.abs(b) > Math.abs(a) ? b : a;
}
