import type { FastMove } from './fastMoves.js';
import type { Levels } from './levels.js';
import { highestRebound } from './mechanics.js';

/**
 * What the throttle can have done in its fast moves: going one way only until it touched the stop, then staying
 * between where it came to rest and its highest rebound. Elsewhere the levels are left as they are.
 *
 * @param guide A copy of the levels, which is changed in place.
 * @param until Bins up to which each move's rebounds go on.
 */
export function fastGuide(
  { mean, visible }: Levels,
  guide: Float64Array,
  moves: readonly FastMove[],
  until: readonly number[],
): Float64Array {
  for (const [k, { direction, start, touch, from, to, rebounds }] of moves.entries()) {
    const sign = direction === 'closing' ? 1 : -1;
    oneWay(guide, start, touch, sign, visible);
    // Of a move that began unseen the rebounds tell more than what was seen of its height.
    const top = to + sign * Math.max(highestRebound * Math.abs(from - to), ...rebounds);
    const end = sign > 0 ? Math.min(to, guide[touch]!) : Math.max(to, guide[touch]!);
    const [low, high] = [Math.min(end, top), Math.max(end, top)];
    for (let i = touch; i <= until[k]!; i++) guide[i] = Math.min(high, Math.max(low, mean[i]!));
  }
  return guide;
}

/**
 * Makes a stretch go one way only: along the outermost level still to come where something broke in forward, or
 * along the outermost so far where it broke in backward, whichever changes fewer bins visibly.
 *
 * @param sign 1 for falling, −1 for rising.
 */
function oneWay(
  values: Float64Array,
  from: number,
  to: number,
  sign: 1 | -1,
  visible: number,
): void {
  const falling = values.subarray(from, to + 1).map((level) => sign * level);
  const upper = Float64Array.from(falling);
  const lower = Float64Array.from(falling);
  for (let i = upper.length - 2; i >= 0; i--) upper[i] = Math.max(upper[i]!, upper[i + 1]!);
  for (let i = 1; i < lower.length; i++) lower[i] = Math.min(lower[i]!, lower[i - 1]!);
  const changed = (envelope: Float64Array): number =>
    envelope.reduce(
      (count, level, i) => count + (Math.abs(level - falling[i]!) > visible / 2 ? 1 : 0),
      0,
    );
  const better = changed(upper) <= changed(lower) ? upper : lower;
  for (let i = 0; i < better.length; i++) values[from + i] = sign * better[i]!;
}
