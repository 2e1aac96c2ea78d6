import type { Seconds } from '../units.js';
import type { Span } from './departure.js';
import type { Levels } from './levels.js';
import { handAcceleration } from './mechanics.js';

/** How long going there and back may take, s: shorter ones the path's median takes out, in longer ones a hand can. */
const widths: readonly Seconds[] = [0.03, 0.042, 0.06, 0.085, 0.12];
/** Each width is tried at so many places of itself. */
const placesInWidth = 8;
/** The speeds beside it are taken over this part of the width. */
const speedOver = 1 / 3;
/** Where bins lie farther apart than this part of their interval, samples are missing. */
const regular = 1.2;

interface Candidate extends Span {
  /** How far it goes beyond what a hand can. */
  readonly excess: number;
}

/**
 * The stretches in which a path goes away and comes back without a sudden edge, by more than the visible departure and faster
 * than a hand can: a bump of contact resistance that is gone over slowly. A hand that stops and goes on, however briskly, is none.
 *
 * Method: where the second derivative stays within ±a, a curve can't lie off its chord over a width W and off both lines that
 * lead to the chord's ends, on the same side, by more than a·W²/16.
 *
 * @param path Level of the path, bin by bin.
 * @param fast Marks the bins of fast moves, in which nothing is sought.
 */
export function gradualExcursions(
  { time, interval, visible }: Levels,
  path: Float64Array,
  fast: Uint8Array,
): readonly Span[] {
  const candidates: Candidate[] = [];
  for (const width of widths) {
    const half = Math.round(width / (2 * interval));
    const beside = Math.round(speedOver * 2 * half);
    const stride = Math.floor((2 * half) / placesInWidth);
    if (stride < 1) continue;
    const byHand = (handAcceleration * width * width) / 16;
    const least = Math.max(visible, byHand);
    for (let i = half + beside; i + half + beside < path.length; i += stride) {
      const [from, to] = [i - half, i + half];
      const chord = path[i]! - (path[from]! + path[to]!) / 2;
      if (Math.abs(chord) < least) continue;
      if (fast[from] || fast[i] || fast[to]) continue;
      const seconds = time[to]! - time[from]!;
      if (seconds > 2 * half * interval * regular) continue;
      const side = Math.sign(chord);
      const before = ((path[from]! - path[from - beside]!) / beside) * half;
      const after = ((path[to + beside]! - path[to]!) / beside) * half;
      const beyondBefore = side * (path[i]! - path[from]! - before);
      const beyondAfter = side * (path[i]! - path[to]! + after);
      const depth = Math.min(side * chord, beyondBefore, beyondAfter);
      if (depth >= least && turnsBack(path, from, to) >= visible / 2)
        candidates.push({ from, to, excess: depth - byHand });
    }
  }
  return apart(candidates).map((one) => fitted(time, path, one));
}

/** The best of candidates that overlap, in order of time; those that no other joins are weighed by themselves. */
function apart(candidates: readonly Candidate[]): readonly Candidate[] {
  const groups: Candidate[][] = [];
  let last = -1;
  for (const one of candidates.toSorted((a, b) => a.from - b.from)) {
    if (one.from > last) groups.push([]);
    groups[groups.length - 1]!.push(one);
    last = Math.max(last, one.to);
  }
  return groups.flatMap((group) => {
    const best: Candidate[] = [];
    for (const one of group.toSorted((a, b) => b.excess - a.excess))
      if (!best.some(({ from, to }) => one.from <= to && one.to >= from)) best.push(one);
    return best.sort((a, b) => a.from - b.from);
  });
}

/** How far a path goes back on a stretch against the way that the stretch as a whole goes. */
function turnsBack(path: Float64Array, from: number, to: number): number {
  const sign = path[to]! < path[from]! ? -1 : 1;
  let highest = sign * path[from]!;
  let most = 0;
  for (let i = from; i <= to; i++) {
    highest = Math.max(highest, sign * path[i]!);
    most = Math.max(most, highest - sign * path[i]!);
  }
  return most;
}

/** The same excursion with its ends where it goes farthest beyond what a hand can. */
function fitted(time: Float64Array, path: Float64Array, { from, to }: Span): Span {
  const reach = Math.floor((to - from) / 3);
  let best = { from, to, excess: excessOf(time, path, from, to) };
  for (let k = from - reach; k <= from + reach; k++) {
    const excess = excessOf(time, path, Math.max(0, k), to);
    if (excess > best.excess) best = { ...best, from: Math.max(0, k), excess };
  }
  for (let k = to - reach; k <= to + reach; k++) {
    const end = Math.min(path.length - 1, k);
    const excess = excessOf(time, path, best.from, end);
    if (excess > best.excess) best = { ...best, to: end, excess };
  }
  return best;
}

/** How far a path leaves the chord from one bin to another beyond what a hand can meanwhile. */
function excessOf(time: Float64Array, path: Float64Array, from: number, to: number): number {
  const seconds = time[to]! - time[from]!;
  const speed = (path[to]! - path[from]!) / seconds;
  let most = 0;
  for (let i = from + 1; i < to; i++)
    most = Math.max(most, Math.abs(path[i]! - path[from]! - speed * (time[i]! - time[from]!)));
  return most - (handAcceleration * seconds * seconds) / 16;
}
