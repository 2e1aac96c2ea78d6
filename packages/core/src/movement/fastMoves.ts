import type { Seconds } from '../units.js';
import { firstAt } from './firstAt.js';
import type { Levels } from './levels.js';
import {
  edgeTime,
  handAcceleration,
  highestRebound,
  longestSpring,
  shortestSpring,
} from './mechanics.js';

/** A throttle thrown onto a stop, by its spring or a quick hand, with what followed until it lay still. */
export interface FastMove {
  readonly direction: 'opening' | 'closing';
  /** Bins: the move's first, the one that touches the stop, and the last that a rebound visibly lifts. */
  readonly start: number;
  readonly touch: number;
  readonly settled: number;
  readonly from: number;
  /** Where it came to lie still. */
  readonly to: number;
  /** Heights of the rebounds' tops above where it came to lie still, in order. */
  readonly rebounds: readonly number[];
}

/** Level of a bin, turned so that the move in question falls. */
type Height = (bin: number) => number;

/** A move counts as fast from this change on, within this time or from one sample to the next. */
const fastChange = 0.06;
const fastTime: Seconds = 0.01;
/** A contact's edge, slowed down by its lead, is shorter than the shortest fall; both need telling apart only where samples are this close. */
const resolved: Seconds = 0.004;
const smallestHeight = 0.12;
/** The fall goes on as long as it is faster than this, spans per second, over this time. */
const slowest = 1;
const speedOver: Seconds = 5e-3;
/** A spring accelerates: half the way takes at least this part of the time. A lead that discharges is fastest at first. */
const halfWay = 0.4;
/** Between bins that resolve a fall no single one takes more than this part of it. */
const ofOneBin = 0.6;
/** A throttle comes to lie still no farther above the touch than this part of the height, and the visible departure. */
const farthestStick = 0.1;
/** A mean level this near to another can't be told from it, for what parts may differ. */
const nearRest = 0.03;
/** Rebounds have died away after this time. */
const longestSettling: Seconds = 0.45;
/** Nothing rebounds after the throttle has lain still for this long. */
const stillness: Seconds = 0.05;

/**
 * Finds the moves in which a throttle is thrown onto a stop: a change within tens of milliseconds, ever faster, after
 * which it comes to lie still near where it touched, but for rebounds that come at once and stay low.
 *
 * @param levels The recording without what a contact did.
 */
export function findFastMoves(levels: Levels): readonly FastMove[] {
  const { time, mean, visible, interval } = levels;
  const moves: FastMove[] = [];
  const reach = Math.max(1, Math.round(fastTime / interval));
  const least = fastChange + visible;
  const falling: Height = (bin) => mean[bin]!;
  const rising: Height = (bin) => -mean[bin]!;
  for (let i = 0; i + reach < mean.length; i++) {
    const change = mean[i + reach]! - mean[i]!;
    if (Math.abs(change) < least) continue;
    const sign = change < 0 ? 1 : -1;
    const height = change < 0 ? falling : rising;
    const early = afterGap(time, i, i + reach, interval);
    const move = fastMoveAt(time, height, sign, early, i + reach, levels);
    if (!move) continue;
    moves.push({
      ...move,
      direction: sign > 0 ? 'closing' : 'opening',
      from: sign * move.from,
      to: sign * move.to,
    });
    i = Math.max(i, move.settled);
  }
  return moves;
}

/** The fast fall that is under way between two bins, if it is one. */
function fastMoveAt(
  time: Float64Array,
  height: Height,
  sign: 1 | -1,
  early: number,
  late: number,
  levels: Levels,
): Omit<FastMove, 'direction'> | undefined {
  const { visible, interval, rest } = levels;
  const step = Math.max(1, Math.round(speedOver / interval));
  const least = Math.max(slowest * step * interval, visible / 2);
  const touch = touchAfter(
    time.length,
    height,
    lowestOf(height, early, late),
    step,
    least,
    visible,
  );
  const start = startBefore(time, height, early, step, least, visible);
  const fall = height(start) - height(touch);
  const seconds = time[touch]! - time[start]!;
  const unseen = beginsUnseen(sign, start, levels);
  const most = unseen ? Math.max(fall, 1) : fall;
  if (most < smallestHeight || seconds > longestSpring + interval) return undefined;
  // What is seen of it may be the end alone, as slow as a stop's damping makes it.
  if (unseen && fall * longestSpring < seconds - shortestSpring) return undefined;
  if (interval < resolved && !unseen) {
    if (seconds < shortestSpring / 2) return undefined;
    const jump = steepest(height, start, touch);
    if (height(jump - 1) - height(jump) > ofOneBin * fall) return undefined;
    const landed = afterJump(height, jump, touch);
    if (!isFastBeside(levels, height, start, touch, jump - 1, landed)) return undefined;
    const isSpring = accelerates(time, height, start, touch);
    const isSpringBeyond =
      accelerates(time, height, landed, touch) &&
      height(landed) - height(touch) > (fastChange / fastTime) * (time[touch]! - time[landed]!);
    if (!isSpring && !isSpringBeyond) return undefined;
  }
  const still = lyingStill(
    time,
    height,
    touch,
    height(touch) + farthestStick * fall,
    visible,
    interval,
  );
  if (!still) return undefined;
  if (!unseen && risesTooFast(time, height, start, touch)) return undefined;
  if (unseen && still.level < height(touch) - farthestStick * fall - visible) return undefined;
  const resolvedFall = interval < resolved && !unseen && seconds >= shortestSpring;
  if (!resolvedFall && isLifted(sign * still.level, rest)) return undefined;
  const after = reboundsOf(height, touch, still.until, still.level, visible);
  if (after.highest > highestRebound * most + visible) return undefined;
  return {
    start,
    touch,
    settled: after.end,
    from: height(start),
    to: still.level,
    rebounds: after.tops,
  };
}

/** There and back is what begins no higher above the touch than this part of the fall. */
const ofFall = 0.2;

/** Whether the height from which a move falls was reached just before, sooner than a hand can lift it there. */
function risesTooFast(time: Float64Array, height: Height, start: number, touch: number): boolean {
  const fall = height(start) - height(touch);
  const soonest = Math.sqrt((2 * fall) / handAcceleration);
  let i = start;
  while (i > 0 && time[start]! - time[i - 1]! < soonest) {
    i--;
    if (height(i) <= height(touch) + ofFall * fall) return true;
  }
  return false;
}

/** A gap is longer than this many bins, and than a speed is taken over. */
const gapBins = 2;

function isGap(time: Float64Array, i: number, interval: Seconds): boolean {
  return time[i]! - time[i - 1]! > gapBins * Math.max(speedOver, interval);
}

/** The first bin after the last gap between two bins, or the earlier of them. */
function afterGap(time: Float64Array, early: number, late: number, interval: Seconds): number {
  for (let i = late; i > early; i--) if (isGap(time, i, interval)) return i;
  return early;
}

/** Whether a fall began in a gap or beyond the recorder's range, from as high as the other stop. */
function beginsUnseen(sign: 1 | -1, start: number, levels: Levels): boolean {
  const { time, mean, interval, clip, visible, rest } = levels;
  if (start === 0 || isGap(time, start, interval)) return true;
  const top = mean[start]!;
  // A lifted wiper's level may lie at the end of the range, too; the throttle does not.
  if (isLifted(top, rest)) return false;
  return sign > 0 ? top > clip.high - visible : top < clip.low + visible;
}

/** A signal that lies at the load's rest level, beyond the stops, is a lifted wiper's. */
function isLifted(level: number, rest: number | undefined): boolean {
  const isBeyond = rest !== undefined && (rest < -nearRest || rest > 1 + nearRest);
  return isBeyond && Math.abs(level - rest) < nearRest;
}

/** The end of a fall, going on from a bin as long as it falls fast; then the first bin as low as that. */
function touchAfter(
  bins: number,
  height: Height,
  from: number,
  step: number,
  least: number,
  visible: number,
): number {
  let lowest = from;
  while (lowest + step < bins) {
    let ahead = lowestOf(height, lowest + 1, lowest + step);
    if (height(lowest) - height(ahead) < least) {
      // A low of the noise may hide what is still to come, if nothing rises before it.
      ahead = lowestOf(height, ahead, Math.min(bins - 1, lowest + 2 * step));
      const falls = height(lowest) - height(ahead) >= Math.max(least, visible);
      if (!falls || highestOf(height, lowest, ahead) > height(lowest) + visible) break;
    }
    lowest = ahead;
  }
  let touch = lowest;
  while (touch > from && height(touch - 1) < height(lowest) + visible / 2) touch--;
  return touch;
}

/** The beginning of a fall, going back from a bin as long as it falls fast and no gap lies between. */
function startBefore(
  time: Float64Array,
  height: Height,
  from: number,
  step: number,
  least: number,
  visible: number,
): number {
  const longest = 2 * Math.max(speedOver, time[from + 1]! - time[from]!);
  let start = from;
  while (
    start - step >= 0 &&
    time[start]! - time[start - step]! <= longest &&
    height(start - step) - height(start) >= least
  ) {
    start -= step;
  }
  // How much higher it began lies in the gap.
  if (start > 0 && time[start]! - time[start - 1]! > longest) return start;
  const top = height(start);
  while (height(start + 1) > top - visible / 2) start++;
  return start;
}

function lowestOf(height: Height, from: number, to: number): number {
  let lowest = from;
  for (let i = from; i <= to; i++) if (height(i) < height(lowest)) lowest = i;
  return lowest;
}

function highestOf(height: Height, from: number, to: number): number {
  let highest = height(from);
  for (let i = from + 1; i <= to; i++) highest = Math.max(highest, height(i));
  return highest;
}

/** The bin that ends the largest fall from one bin to the next. */
function steepest(height: Height, start: number, touch: number): number {
  let at = start + 1;
  for (let i = start + 2; i <= touch; i++)
    if (height(i - 1) - height(i) > height(at - 1) - height(at)) at = i;
  return at;
}

/** Where a jump is over that reaches its largest fall from one bin to the next in a given bin: it may lie in two or three bins. */
function afterJump(height: Height, steep: number, touch: number): number {
  const half = (height(steep - 1) - height(steep)) / 2;
  let at = steep;
  while (at < touch && height(at) - height(at + 1) > half) at++;
  return at;
}

/** Whether a stretch falls fast before its jump or after it, too, if it has one: a quick hand may go over a step of the track. */
function isFastBeside(
  { time, interval, visible }: Levels,
  height: Height,
  start: number,
  touch: number,
  jump: number,
  landed: number,
): boolean {
  const bins = landed - jump;
  const beside = Math.max(
    height(Math.max(start, jump - bins)) - height(jump),
    height(landed) - height(Math.min(touch, landed + bins)),
  );
  // The fastest part of a spring's fall is hardly faster than what is beside it.
  const isJump = height(jump) - height(landed) > 2 * beside + visible;
  if (!isJump || time[landed]! - time[jump]! > edgeTime + interval) return true;
  const reach = Math.max(1, Math.round(fastTime / interval));
  const fast = (from: number, to: number): boolean => {
    for (let i = from; i + reach <= to; i++)
      if (height(i) - height(i + reach) >= fastChange + visible) return true;
    return false;
  };
  return fast(start, jump) || fast(landed, touch);
}

/** Whether a stretch falls ever faster, as a spring makes it, and not ever slower as a lead does that discharges. */
function accelerates(time: Float64Array, height: Height, start: number, touch: number): boolean {
  const middle = (height(start) + height(touch)) / 2;
  let i = touch;
  while (i > start && height(i) < middle) i--;
  return (
    height(start) - height(touch) >= smallestHeight &&
    time[i]! - time[start]! >= halfWay * (time[touch]! - time[start]!)
  );
}

/** The first stretch after a touch in which the level stays within the visible departure of its mean: its end, and that mean. */
function lyingStill(
  time: Float64Array,
  height: Height,
  touch: number,
  highest: number,
  visible: number,
  interval: Seconds,
): { readonly until: number; readonly level: number } | undefined {
  const step = Math.max(1, firstAt(time, time[touch]! + stillness / 10) - touch);
  for (let at = touch; at < time.length; at += step) {
    // A gap may hide how it came to lie still.
    if ((at - touch) * interval > longestSettling) return undefined;
    const end = firstAt(time, time[at]! + stillness);
    let [sum, low, high] = [0, height(at), height(at)];
    let i = at;
    for (; i <= end && high - low <= 2 * visible; i++) {
      sum += height(i);
      low = Math.min(low, height(i));
      high = Math.max(high, height(i));
    }
    const mean = sum / (i - at);
    if (i <= end || high - mean > visible || mean - low > visible) continue;
    if (mean > highest + visible) continue;
    const half = (at + end) >> 1;
    const drift = meanOf(height, half, end) - meanOf(height, at, half);
    if (Math.abs(drift) <= visible / 2) return { until: end, level: mean };
  }
  return undefined;
}

function meanOf(height: Height, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i <= to; i++) sum += height(i);
  return sum / (to - from + 1);
}

/** The tops between the touch and the rest, in levels above it. */
function reboundsOf(
  height: Height,
  touch: number,
  still: number,
  closed: number,
  visible: number,
): { readonly tops: readonly number[]; readonly highest: number; readonly end: number } {
  const tops: number[] = [];
  let end = touch;
  let top = 0;
  let highest = 0;
  let lowest = height(touch) - closed;
  for (let i = touch; i <= still; i++) {
    const above = height(i) - closed;
    highest = Math.max(highest, i > touch ? above : 0);
    if (above > visible / 2) {
      end = i;
      if (above - lowest > visible) top = Math.max(top, above);
    } else if (above < visible / 4 && top > 0) {
      tops.push(top);
      top = 0;
      lowest = above;
    }
    lowest = Math.min(lowest, above);
  }
  return { tops, highest, end };
}
