import type { Seconds } from '../units.js';
import { keptRows } from './keptRows.js';
import { asked, fewestSamples, nearlyAll, strideOver, writtenAlike } from './limits.js';
import type { Sweep } from './sweep.js';

/**
 * Takes a recording that was drawn in straight lines between fewer readings, and written in full, for those readings: what lies between
 * them shows nothing, and hides how coarse and how noisy they are.
 *
 * @param sweep On its even clock.
 * @returns The readings, and the interval of them; nothing where none were drawn between, or not evenly.
 */
export function takenReadings(
  sweep: Sweep,
): { readonly sweep: Sweep; readonly sampledEvery: Seconds } | undefined {
  const { time, signal } = sweep;
  const corners = cornersOf(signal);
  if (corners.length < fewestSamples) return undefined;
  const apart = usualGap(corners);
  const sampledEvery = (apart * (time[time.length - 1]! - time[0]!)) / (time.length - 1);
  if (apart < 2 || !(sampledEvery <= asked)) return undefined;
  const even = corners.filter((at, i) => i > 0 && (at - corners[i - 1]!) % apart === 0).length;
  if (even < nearlyAll * (corners.length - 1)) return undefined;
  const rows: number[] = [];
  for (let at = corners[0]! % apart; at < corners[0]!; at += apart) rows.push(at);
  for (const [i, corner] of corners.entries())
    for (let at = corner; at < (corners[i + 1] ?? signal.length); at += apart) rows.push(at);
  return { sweep: keptRows(sweep, rows), sampledEvery };
}

/** Rows that lie off the line through their neighbours. */
function cornersOf(signal: Float64Array): readonly number[] {
  let [low, high] = [Infinity, -Infinity];
  const stride = strideOver(signal.length);
  for (let i = 0; i < signal.length; i += stride) {
    low = Math.min(low, signal[i]!);
    high = Math.max(high, signal[i]!);
  }
  const least = writtenAlike * (high - low);
  const corners: number[] = [];
  for (let i = 1; i + 1 < signal.length; i++) {
    if (Math.abs(signal[i - 1]! - 2 * signal[i]! + signal[i + 1]!) <= least) continue;
    corners.push(i);
    // Where every row is one nothing was drawn.
    if (corners.length === fewestSamples && usualGap(corners) < 2) return [];
  }
  return corners;
}

/** The shortest gap that is no rarity. */
function usualGap(corners: readonly number[]): number {
  const counts = new Map<number, number>();
  for (let i = 1; i < corners.length; i++) {
    const gap = corners[i]! - corners[i - 1]!;
    counts.set(gap, (counts.get(gap) ?? 0) + 1);
  }
  const often = [...counts].filter(([, count]) => count > (1 - nearlyAll) * corners.length);
  return Math.min(...often.map(([gap]) => gap));
}
