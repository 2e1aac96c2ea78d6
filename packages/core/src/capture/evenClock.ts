import { median } from '../statistics/median.js';
import type { Seconds } from '../units.js';
import {
  accident,
  asked,
  fewestSamples,
  gapIntervals,
  longestAsked,
  strideOver,
} from './limits.js';
import { stretchesOf } from './stretches.js';
import type { TakenStamps } from './takenStamps.js';

/**
 * The middle of a block of stamps over so long strays by less than an interval, unless a sample is missing between them: one that is
 * written late holds up those behind it.
 */
const blockLength = asked / 2;
/**
 * Middles of blocks of stamps that are written late by chance lie within so many mean deviations of a block's stamps: eight standard
 * deviations of a median of 32, and a third more, for a late stamp holds the next ones up.
 */
const blockScatters = 3;
/** Stamps that stray less than this part of an interval are as good as even. */
const asGoodAsEven = 0.3;
/** Neighbouring samples that are compared with a straight line, where they change by more than this part of the whole. */
const neighbours = 6;
const leastChange = 0.02;

/**
 * Takes the stamps of a recording for measured values of an even clock, where they can be and where the signal is the smoother for it:
 * a logger that samples evenly writes whole milliseconds, writes late, or writes several rows under one stamp.
 *
 * @param time Never decreasing.
 */
export function evenClock(time: Float64Array, signal: Float64Array): TakenClock {
  const { least, most, repeated } = gapsOf(time);
  const asStamped =
    repeated > accident * time.length
      ? spreadClock(time)
      : { time, clock: 'stamped' as const, moved: 0 };
  if (time.length < 2 * neighbours || most - least < asGoodAsEven * least) return asStamped;
  const pieces = stretchesOf(time).map(([from, to]) =>
    evenPiece(time.subarray(from, to), signal.subarray(from, to)),
  );
  if (pieces.some((piece) => piece === undefined)) return asStamped;
  const even = new Float64Array(time.length);
  let [done, moved] = [0, 0];
  for (const piece of pieces as Float64Array[])
    for (const at of piece) {
      moved = Math.max(moved, Math.abs(at - time[done]!));
      even[done++] = at;
    }
  return { time: even, clock: 'even', moved };
}

type TakenClock = { readonly time: Float64Array } & Pick<TakenStamps, 'clock' | 'moved'>;

/** The even clock's own times of samples without a pause; undefined where they may lie on none. */
function evenPiece(time: Float64Array, signal: Float64Array): Float64Array | undefined {
  if (time.length < 2 * neighbours) return undefined;
  // The even line's interval is one between them.
  const { least, most } = gapsOf(time);
  const { start, interval } = evenLine(time);
  if (most - least < asGoodAsEven * interval) return undefined;
  let farthest = 0;
  for (let i = 0; i < time.length; i++)
    farthest = Math.max(farthest, Math.abs(time[i]! - start - i * interval));
  // A host's stamps lie within half the time between its questions.
  if (farthest > longestAsked(interval) / 2) return undefined;
  const blocks = blocksOff(time, start, interval);
  if (blocks.stray > Math.max(interval, blockScatters * blocks.scatter)) return undefined;
  if (least > 0 && !isSmootherEven(time, signal)) return undefined;
  return Float64Array.from(time, (_, i) => start + i * interval);
}

/** The least and the most time between samples, and how many bear the stamp of the one before. */
function gapsOf(time: Float64Array): { least: Seconds; most: Seconds; repeated: number } {
  let [least, most, repeated] = [Infinity, 0, 0];
  for (let i = 1; i < time.length; i++) {
    const gap = time[i]! - time[i - 1]!;
    if (gap < least) least = gap;
    if (gap > most) most = gap;
    if (gap === 0) repeated++;
  }
  return { least, most, repeated };
}

function spreadClock(time: Float64Array): ReturnType<typeof evenClock> {
  const spread = spreadStamps(time);
  const moved = spread.reduce((most, at, i) => Math.max(most, at - time[i]!), 0);
  return { time: spread, clock: 'spread', moved };
}

/** Rows of one stamp lie evenly between it and the next one, or as far apart as rows usually do where a gap follows or nothing. */
function spreadStamps(time: Float64Array): Float64Array {
  const spread = time.slice();
  const gaps: number[] = [];
  let first = 0;
  for (let i = 1; i < time.length; i++) {
    if (time[i] === time[i - 1]) continue;
    gaps.push((time[i]! - time[first]!) / (i - first));
    first = i;
  }
  const usual = median(Float64Array.from(gaps.filter((_, i) => i % strideOver(gaps.length) === 0)));
  first = 0;
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && time[i] === time[first]) continue;
    const rows = i - first;
    const each = i < time.length ? (time[i]! - time[first]!) / rows : usual;
    const step = each > gapIntervals * usual ? usual : each;
    for (let k = 1; k < rows; k++) spread[first + k] = time[first]! + k * step;
    first = i;
  }
  return spread;
}

/** The straight line of stamps over their number. */
function evenLine(time: Float64Array): { readonly start: Seconds; readonly interval: Seconds } {
  const count = time.length;
  const middle = (count - 1) / 2;
  let [sum, product] = [0, 0];
  for (let i = 0; i < count; i++) {
    sum += time[i]! - time[0]!;
    product += (i - middle) * (time[i]! - time[0]!);
  }
  const interval = product / ((count * (count * count - 1)) / 12);
  return { start: time[0]! + sum / count - middle * interval, interval };
}

/** How far the middles of blocks stray from an even clock, and what the stamps of a block usually scatter by, mean deviation. */
function blocksOff(
  time: Float64Array,
  start: Seconds,
  interval: Seconds,
): { readonly stray: Seconds; readonly scatter: Seconds } {
  let [low, high] = [Infinity, -Infinity];
  const scatters: number[] = [];
  const apart = Math.max(1, Math.ceil(blockLength / fewestSamples / interval));
  const stride =
    fewestSamples * apart * Math.max(1, Math.floor(time.length / (fewestSamples * apart) / 400));
  for (let from = 0; from + fewestSamples * apart <= time.length; from += stride) {
    const off = Float64Array.from({ length: fewestSamples }, (_, k) => {
      const i = from + k * apart;
      return time[i]! - start - i * interval;
    });
    const middle = median(off);
    scatters.push(off.reduce((sum, one) => sum + Math.abs(one - middle), 0) / fewestSamples);
    low = Math.min(low, middle);
    high = Math.max(high, middle);
  }
  const scatter = scatters.length > 0 ? median(Float64Array.from(scatters)) : 0;
  return { stray: high - low, scatter };
}

/** Whether samples that change lie nearer to straight lines over their number than over their stamps. */
function isSmootherEven(time: Float64Array, signal: Float64Array): boolean {
  let [low, high] = [Infinity, -Infinity];
  for (const volts of signal) {
    if (volts < low) low = volts;
    if (volts > high) high = volts;
  }
  const least = leastChange * (high - low);
  let [stamped, even] = [0, 0];
  for (let from = 0; from + neighbours <= signal.length; from += neighbours) {
    let [a, b] = [Infinity, -Infinity];
    for (let i = from; i < from + neighbours; i++) {
      a = Math.min(a, signal[i]!);
      b = Math.max(b, signal[i]!);
    }
    if (b - a < least) continue;
    const square = (b - a) ** 2;
    const own = offLine(signal, from, (i) => time[i]! - time[from]!) / square;
    const other = offLine(signal, from, (i) => i - from) / square;
    if (Math.min(own, other) > 0.02) continue;
    stamped += Math.min(own, 0.1);
    even += Math.min(other, 0.1);
  }
  return even < stamped;
}

/** Sum of squares about the straight line through neighbouring samples. */
function offLine(signal: Float64Array, from: number, x: (i: number) => number): number {
  let [sx, sy] = [0, 0];
  for (let i = from; i < from + neighbours; i++) {
    sx += x(i);
    sy += signal[i]!;
  }
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = from; i < from + neighbours; i++) {
    const dx = x(i) - sx / neighbours;
    const dy = signal[i]! - sy / neighbours;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  return xx > 0 ? yy - (xy * xy) / xx : yy;
}
