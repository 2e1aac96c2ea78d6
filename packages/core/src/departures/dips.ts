import type { Levels } from '../movement/levels.js';
import { findStrokes } from '../movement/movement.js';
import type { Stops } from '../movement/stopsOf.js';
import type { Seconds } from '../units.js';
import type { Excursion } from './departure.js';

/** A dip is over within one of these times. */
const lengths: readonly Seconds[] = [0.012, 0.025, 0.05, 0.09];
/** The line that it leaves and returns to is seen for half as long on either side, and as long as this. */
const leastBeside: Seconds = 6e-3;
const fewestBins = 4;
/** A hand that went away and came back in this time would need this acceleration, spans per second squared; no hand has it. */
const noHand = 200;
/** What lies beside a dip lies on one line, within this part of its depth. */
const onLine = 0.1;
/** Dips at one place lie this near to each other, and are so many; fewer may be the hand's. */
const onePlace = 0.02;
const fewest = 3;
/** Dirt that shows smoothly does so on this part of the passes over it at the least; a hand's haste comes and goes. */
const leastShare = 0.5;
/** The throttle moves beside it; a throttle that rests may have been tapped, spans per second. */
const moving = 0.05;
/** Nearer to a stop a throttle that lands on it, or leaves it, turns as quickly. */
const nearStop = 0.05;
/** Between samples farther apart a hand's turn has no shape. */
const coarse: Seconds = 2.5e-3;

/**
 * Finds where the signal leaves its line smoothly and returns to the same line, sooner than a hand can turn round twice: dirt that a
 * wiper passes over without an edge.
 *
 * @param mean The recording without what was found.
 * @param skip Bins that are left out.
 */
export function findDips(
  levels: Levels,
  mean: Float64Array,
  stops: Stops,
  skip: Uint8Array,
): readonly Excursion[] {
  const { time, interval, visible, noise } = levels;
  const found: Excursion[] = [];
  if (interval > coarse) return found;
  const taken = skip.slice();
  // A hand that turns round short of a stop, or at one that is not known, turns at an outermost level.
  const lowest = mean.reduce((least, level) => Math.min(least, level), Infinity);
  const highest = mean.reduce((most, level) => Math.max(most, level), -Infinity);
  const closed = Math.max(stops.closed, lowest) + nearStop;
  const open = Math.min(stops.open, highest) - nearStop;
  for (const length of lengths) {
    const bins = Math.round(length / interval);
    if (bins < fewestBins) continue;
    const beside = Math.max(fewestBins, Math.round(Math.max(leastBeside, length / 2) / interval));
    const step = Math.max(1, Math.floor(bins / 6));
    for (let from = beside; from + bins + beside < mean.length; from += step) {
      const to = from + bins;
      const chord = (mean[from]! + mean[to]!) / 2;
      if (Math.abs(mean[(from + to) >> 1]! - chord) < visible / 2) continue;
      if (taken.subarray(from - beside, to + beside).includes(1)) continue;
      if (time[to + beside]! - time[from - beside]! > 1.5 * (bins + 2 * beside) * interval)
        continue;
      if (turnsRound(mean, from, to, beside, noise)) continue;
      const one = dipAt(levels, mean, from, to, beside);
      if (!one) continue;
      if (one.level < closed || one.level > open) continue;
      const depth = Math.max(-one.below, one.above);
      const seconds = time[one.to]! - time[one.from]! + 2 * interval;
      if (depth < visible + 2 * noise || (8 * depth) / seconds ** 2 < noHand) continue;
      found.push(one);
      taken.fill(1, from - 1, to + 2);
    }
  }
  if (found.length < fewest) return [];
  const strokes = findStrokes(time, mean);
  const isRepeated = (one: Excursion): boolean => {
    const alike = found.filter(({ level }) => Math.abs(level - one.level) <= onePlace);
    if (alike.length < fewest) return false;
    const over = strokes.filter(
      ({ from, to }) =>
        Math.min(from, to) < one.level - onePlace && Math.max(from, to) > one.level + onePlace,
    );
    const showing = over.filter(({ start, end }) =>
      alike.some(({ from, to }) => time[to]! >= start && time[from]! <= end),
    );
    return showing.length >= leastShare * over.length;
  };
  return found.filter(isRepeated).sort((a, b) => a.from - b.from);
}

/** Whether the throttle goes one way before a stretch and the other way after it: a hand that turns round is no dip. */
function turnsRound(
  mean: Float64Array,
  from: number,
  to: number,
  beside: number,
  noise: number,
): boolean {
  const before = mean[from]! - mean[from - beside]!;
  const after = mean[to + beside]! - mean[to]!;
  return before * after < 0 && Math.min(Math.abs(before), Math.abs(after)) > 3 * noise;
}

/** What leaves the line through the bins beside a stretch, where they lie on one and the stretch goes to one side of it. */
function dipAt(
  { time, noise, rest }: Levels,
  mean: Float64Array,
  from: number,
  to: number,
  beside: number,
): Excursion | undefined {
  const sums = { n: 0, t: 0, y: 0, tt: 0, ty: 0 };
  const origin = time[from]!;
  const around = (visit: (i: number) => void): void => {
    for (let i = from - beside; i < from; i++) visit(i);
    for (let i = to + 1; i <= to + beside; i++) visit(i);
  };
  around((i) => {
    const t = time[i]! - origin;
    sums.n++;
    sums.t += t;
    sums.y += mean[i]!;
    sums.tt += t * t;
    sums.ty += t * mean[i]!;
  });
  const spread = sums.tt - (sums.t * sums.t) / sums.n;
  const speed = (sums.ty - (sums.t * sums.y) / sums.n) / spread;
  const level = (sums.y - speed * sums.t) / sums.n;
  const off = (i: number): number => mean[i]! - level - speed * (time[i]! - origin);
  let worst = 0;
  around((i) => {
    worst = Math.max(worst, Math.abs(off(i)));
  });
  let [below, above, deepest] = [0, 0, from];
  for (let i = from; i <= to; i++) {
    const one = off(i);
    if (Math.abs(one) > Math.max(-below, above)) deepest = i;
    below = Math.min(below, one);
    above = Math.max(above, one);
  }
  const depth = Math.max(-below, above);
  const other = Math.min(-below, above);
  const slack = onLine * depth + 3 * noise;
  if (worst > slack || other > slack || Math.abs(speed) < moving) return undefined;
  if (rest === undefined || (rest - level) * (below + above) <= 0) return undefined;
  let [first, last] = [from, to];
  while (first < deepest && Math.abs(off(first)) <= slack) first++;
  while (last > deepest && Math.abs(off(last)) <= slack) last--;
  const there = mean[deepest]! - off(deepest);
  return { from: first, to: last, below, above, level: there, swings: 0 };
}
