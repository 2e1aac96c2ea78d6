import type { Levels } from '../movement/levels.js';
import type { RawEvent } from '../path/decode.js';
import type { Seconds } from '../units.js';

/** Jumps of one excursion follow each other within this time, and are back within that. */
const pairTime: Seconds = 0.06;
const longest: Seconds = 0.25;
/** Back counts what is left of the farthest by this part, or of the visible departure by that. */
const leftOfFarthest = 0.25;
const leftOfVisible = 0.7;

/** Jumps that lead away and soon back are one excursion. */
export function withoutPairs(
  events: readonly RawEvent[],
  { mean, time, visible, rest, noise }: Levels,
): readonly RawEvent[] {
  const result: RawEvent[] = [];
  for (let i = 0; i < events.length; i++) {
    const one = events[i]!;
    if (one.kind === 'jump' && comesBack(one)) {
      result.push({ kind: 'excursion', state: 'foreign', from: one.from + 1, to: one.to - 1 });
      continue;
    }
    const last = one.kind === 'jump' ? backAgain(i) : undefined;
    if (last === undefined) result.push(one);
    else {
      const to = events[last]!.to - 1;
      result.push({ kind: 'excursion', state: 'lifted', from: one.from + 1, to });
      i = last;
    }
  }
  return result;

  /** Whether a jump that took its time led back to where it began. */
  function comesBack({ from, to }: RawEvent): boolean {
    let farthest = 0;
    for (let i = from + 1; i < to; i++)
      farthest = Math.max(farthest, Math.abs(mean[i]! - mean[from]!));
    const left = Math.abs(mean[to]! - mean[from]!);
    return (
      farthest >= visible && left <= Math.max(leftOfFarthest * farthest, leftOfVisible * visible)
    );
  }

  /** Whether the signal lies at the level of a lifted wiper all the while, however long. */
  function liesAtRest(first: number, last: number): boolean {
    if (rest === undefined) return false;
    const near = visible / 2 + 4 * noise;
    for (let i = first; i <= last; i++) if (Math.abs(mean[i]! - rest) > near) return false;
    return true;
  }

  function backAgain(first: number): number | undefined {
    let [sum, farthest] = [0, 0];
    for (let k = first; k < events.length; k++) {
      const { kind, from, to } = events[k]!;
      if (k > first && !liesAtRest(events[k - 1]!.to, from)) {
        if (time[to]! - time[events[first]!.from]! > longest) return undefined;
        if (time[from]! - time[events[k - 1]!.to]! > pairTime) return undefined;
      }
      if (kind !== 'jump') continue;
      sum += mean[to]! - mean[from]!;
      farthest = Math.max(farthest, Math.abs(sum));
      const least = Math.max(leftOfFarthest * farthest, leftOfVisible * visible);
      if (k > first && Math.abs(sum) <= least) return k;
    }
    return undefined;
  }
}
