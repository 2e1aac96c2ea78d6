import type { Fraction, Volts } from '../units.js';
import { fewestSamples, nearlyAll } from './limits.js';

/** Rows that were sampled one after the other have the higher one first where the signal falls: so many pairs that fall tell. */
const fewest = 3;
/** Where too few moved: an interval of ten samples, of which movement leaves the first and the last. */
const usualApart = 0.9;

/** Rows that are the lowest and the highest reading of each interval. */
export interface OrderedPairs {
  /** In the order in which they follow on the ones before. */
  readonly signal: Float64Array;
  readonly pairs: number;
  /** How far apart the two of a pair were taken while the signal moved, as a part of the time between stamps. */
  readonly apart: Fraction;
}

/**
 * Takes the lowest and the highest reading of each interval, written under one stamp with the lower first, for what they are: while
 * the signal moves one way they are the interval's first and last samples, so that what it moves within a pair and between pairs
 * tells how far apart in time they lie.
 *
 * @param time Never decreasing, as stamped.
 * @returns Nothing where the rows are no such pairs.
 */
export function orderedPairs(time: Float64Array, signal: Float64Array): OrderedPairs | undefined {
  let [pairs, groups] = [0, 0];
  // Pairs that differ, of all and of those in which the signal falls from the pair before.
  let [differ, lowerFirst, falling, fallingLowerFirst] = [0, 0, 0, 0];
  for (let i = 0; i < time.length; ) {
    let to = i + 1;
    while (to < time.length && time[to] === time[i]) to++;
    groups++;
    if (to - i === 2) {
      pairs++;
      const [first, second] = [signal[i]!, signal[i + 1]!];
      const isLower = first < second ? 1 : 0;
      if (first !== second) {
        differ++;
        lowerFirst += isLower;
        if (i >= 2 && Math.max(first, second) <= Math.min(signal[i - 1]!, signal[i - 2]!)) {
          falling++;
          fallingLowerFirst += isLower;
        }
      }
    }
    i = to;
  }
  const areMost =
    pairs >= nearlyAll * groups &&
    lowerFirst >= nearlyAll * differ &&
    falling >= fewest &&
    fallingLowerFirst >= nearlyAll * falling;
  if (!areMost) return undefined;
  const ordered = signal.slice();
  const isPairAt = (i: number): boolean => time[i] === time[i + 1];
  const nextMiddle = ((signal[2] ?? 0) + (signal[3] ?? 0)) / 2;
  if (isPairAt(0) && nextMiddle < (signal[0]! + signal[1]!) / 2) {
    ordered[0] = signal[1]!;
    ordered[1] = signal[0]!;
  }
  const fastest: Move[] = [];
  let before = 0;
  for (let i = 1; i + 1 < time.length; i++) {
    if (i === 1 && isPairAt(0)) continue;
    if (!isPairAt(i)) continue;
    const [low, high] = [signal[i]!, signal[i + 1]!];
    if (Math.abs(high - ordered[i - 1]!) < Math.abs(low - ordered[i - 1]!)) {
      ordered[i] = high;
      ordered[i + 1] = low;
    }
    const change = ordered[i + 1]! - ordered[i]!;
    if (before * change > 0)
      keepFastest(fastest, { within: change, whole: ordered[i + 1]! - ordered[i - 1]! });
    before = change;
    i++;
  }
  return { signal: ordered, pairs, apart: usualPart(fastest) };
}

/** What the signal moves within a pair, and since the pair before, V. */
interface Move {
  readonly within: Volts;
  readonly whole: Volts;
}

function keepFastest(fastest: Move[], move: Move): void {
  const last = fastest[fewestSamples - 1];
  if (last && Math.abs(last.whole) >= Math.abs(move.whole)) return;
  if (last) fastest.pop();
  fastest.push(move);
  fastest.sort((a, b) => Math.abs(b.whole) - Math.abs(a.whole));
}

/** The mean of what the fastest movements tell, each as much: noise widens pairs of slow ones, and a leap falls between two samples. */
function usualPart(fastest: readonly Move[]): Fraction {
  if (fastest.length < fewest) return usualApart;
  const part = fastest.reduce((sum, { within, whole }) => sum + within / whole, 0) / fastest.length;
  return part <= 1 ? part : usualApart;
}

/**
 * Puts the second of each pair as far from the first as it was taken, where the signal moves; where it rests nothing changes by it.
 *
 * @param stamps As written, two rows under each.
 * @param time The stamps' rows spread evenly.
 */
export function pairTimes(stamps: Float64Array, time: Float64Array, apart: Fraction): Float64Array {
  const moved = time.slice();
  for (let i = 0; i + 1 < time.length; i++)
    if (stamps[i] === stamps[i + 1]) {
      moved[i + 1] = time[i]! + 2 * apart * (time[i + 1]! - time[i]!);
      i++;
    }
  return moved;
}
