import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import { lineThrough } from './lineThrough.js';

/** The output kept its level while the shaft moved on, and caught up. */
export interface Standstill {
  /** First bin at the level that it kept, last bin there, and the first one back on the line. */
  readonly from: number;
  readonly last: number;
  readonly to: number;
  readonly depth: number;
}

/** A wiper that sticks keeps its level for this long; a hand that pauses longer than that is likelier. */
const shortest: Seconds = 3e-3;
const longest: Seconds = 0.5;
const fewestBins = 3;
/** It catches up within one of these times. */
const catchUps: readonly Seconds[] = [2e-3, 5e-3, 0.012];
/** The speeds beside it are taken over as long as it stood, within these bounds. */
const beside: readonly [Seconds, Seconds] = [8e-3, 0.04];
/** What was caught up is what the shaft moved meanwhile, within this part. */
const madeUp = 0.4;
/** No gap lies in what is looked at: it takes hardly longer than its bins. */
const withoutGaps = 1.3;
/** Standing still it moves by this part of that at the most. */
const creeps = 0.4;
/** Catching up is so many times as fast as the movement beside it. */
const faster = 2.5;

/**
 * Finds where the output stood still while the shaft went on, and then caught up with it: a dead spot. A pause of the hand goes on
 * from where it stood.
 *
 * @param mean The recording without excursions.
 * @param skip Bins that are left out.
 */
export function findStandstills(
  levels: Levels,
  mean: Float64Array,
  skip: Uint8Array,
): readonly Standstill[] {
  const { time, visible, interval, noise } = levels;
  const n = mean.length;
  const found: Standstill[] = [];
  const back = Math.max(fewestBins - 1, Math.ceil(shortest / interval));
  const reaches = [
    ...new Set(catchUps.map((seconds) => Math.max(1, Math.round(seconds / interval)))),
  ];
  const own = { ...levels, mean };
  for (let last = back; last + 1 < n; last++) {
    if (skip[last]) continue;
    const next = mean[last + 1]! - mean[last]!;
    for (const reach of reaches) {
      const to = last + reach;
      if (to >= n || skip[to]) break;
      const depth = mean[to]! - mean[last]!;
      if (Math.abs(depth) < visible || next * depth <= 0) continue;
      const still = Math.max(3.5 * noise, 0.12 * Math.abs(depth));
      if (Math.abs(mean[last]! - mean[last - back]!) > still) continue;
      let level = 0;
      for (let i = last - back; i <= last; i++) level += mean[i]!;
      level /= back + 1;
      let from = last;
      while (from > 0 && !skip[from - 1] && Math.abs(mean[from - 1]! - level) <= still) from--;
      const stood = time[last]! - time[from]! + interval;
      if (stood < shortest || stood > longest) continue;
      const over = Math.min(beside[1], Math.max(beside[0], stood));
      const width = Math.max(fewestBins, Math.round(over / interval));
      if (from - width < 0 || to + width >= n) continue;
      const bins = to + width - from + width;
      if (time[to + width]! - time[from - width]! > withoutGaps * bins * interval) continue;
      const sign = Math.sign(depth);
      const lineBefore = lineThrough(own, from - width, from - 1);
      const lineAfter = lineThrough(own, to, to + width - 1);
      const before = sign * lineBefore.speed;
      const after = sign * lineAfter.speed;
      const slowest = Math.min(before, after);
      if (!(slowest > 0.25 * Math.max(before, after))) continue;
      const flat = lineThrough(own, from, last);
      const size =
        sign * (lineAfter.level + lineAfter.speed * (time[to]! - lineAfter.time) - flat.level);
      if (size < 0.9 * visible || Math.abs(flat.speed) * stood > creeps * size) continue;
      const seconds = time[to]! - time[from]!;
      const moved = ((before + after) / 2) * seconds;
      if (Math.abs(moved - size) > madeUp * size + still) continue;
      if (size / (time[to]! - time[last]!) < faster * Math.max(before, after)) continue;
      const around = Math.max(width, Math.round(Math.max(usualOver, 3 * stood) / interval));
      if (size < standsOut * usualChange(own, from - around, from - 1, to, to + around, reach))
        continue;
      const off =
        misfit(own, from - width, from - 1, lineBefore) +
        misfit(own, from, last, { ...flat, speed: 0 }) +
        misfit(own, to, to + width - 1, lineAfter);
      const least =
        2 * (evidence + 1.5 * Math.log(n)) * Math.max(off / Math.max(1, bins - 6), noise ** 2);
      if (cubicMisfit(own, from - width, to + width - 1) - off < least) continue;
      // A step alone would leave what comes before it on one line.
      const goesOn = lineThrough(own, from - width, last);
      const withoutStand =
        off -
        misfit(own, from - width, from - 1, lineBefore) -
        misfit(own, from, last, { ...flat, speed: 0 });
      if (misfit(own, from - width, last, goesOn) + withoutStand - off < least / 2) continue;
      const previous = found[found.length - 1];
      if (previous && previous.to >= from) {
        if (Math.abs(previous.depth) >= size) continue;
        found.pop();
      }
      found.push({ from, last, to, depth });
      break;
    }
  }
  return found;
}

const evidence = 10;
/** What a recording changes by within the same time elsewhere is taken over this long on either side. */
const usualOver: Seconds = 0.08;
const standsOut = 5;

/** Root mean square of the changes within a reach, beside the movement's own, before a place and after it. */
function usualChange(
  { mean }: Pick<Levels, 'mean'>,
  from: number,
  until: number,
  since: number,
  to: number,
  reach: number,
): number {
  let squares = 0;
  let count = 0;
  const last = Math.min(mean.length - 1, to);
  for (const [a, b] of [
    [Math.max(0, from), until],
    [since, last],
  ] as const) {
    const steps = b - a - reach;
    if (steps < 1) continue;
    for (let i = a + reach; i <= b - reach; i++) {
      const bend = mean[i + reach]! - mean[i]! - (mean[i]! - mean[i - reach]!);
      squares += (bend * bend) / 2;
      count++;
    }
  }
  return count > 0 ? Math.sqrt(squares / count) : 0;
}

function misfit(
  { time, mean }: Pick<Levels, 'time' | 'mean'>,
  from: number,
  to: number,
  line: { time: number; level: number; speed: number },
): number {
  let sum = 0;
  for (let i = from; i <= to; i++)
    sum += (mean[i]! - line.level - line.speed * (time[i]! - line.time)) ** 2;
  return sum;
}

/** Sum of squares about the least-squares cubic, through polynomials that are orthogonal on the bins. */
function cubicMisfit(
  { time, mean }: Pick<Levels, 'time' | 'mean'>,
  from: number,
  to: number,
): number {
  const n = to - from + 1;
  const middle = (time[from]! + time[to]!) / 2;
  const half = (time[to]! - time[from]!) / 2 || 1;
  const base: Float64Array[] = [];
  const rest = mean.slice(from, to + 1);
  for (let power = 0; power < 4; power++) {
    const p = new Float64Array(n);
    for (let i = 0; i < n; i++) p[i] = ((time[from + i]! - middle) / half) ** power;
    for (const q of base) {
      let dot = 0;
      for (let i = 0; i < n; i++) dot += p[i]! * q[i]!;
      for (let i = 0; i < n; i++) p[i]! -= dot * q[i]!;
    }
    let norm = 0;
    for (let i = 0; i < n; i++) norm += p[i]! ** 2;
    norm = Math.sqrt(norm) || 1;
    let dot = 0;
    for (let i = 0; i < n; i++) {
      p[i]! /= norm;
      dot += p[i]! * rest[i]!;
    }
    for (let i = 0; i < n; i++) rest[i]! -= dot * p[i]!;
    base.push(p);
  }
  return rest.reduce((sum, r) => sum + r * r, 0);
}
