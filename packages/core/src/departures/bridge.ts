import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import type { Excursion, Span } from './departure.js';
import { lineThrough } from './lineThrough.js';

/** The speeds at a bridge's ends are taken over this time, three bins at the least. */
const speedOver: Seconds = 5e-3;
const fewestBins = 3;
/** A bridge goes beyond its ends by this part of their difference at the most, and a little more. */
const beyondEnds = 0.25;
const beyondLevel = 0.02;
/** A departure beyond this part of the visible one counts for the side that it lies on. */
const ofVisible = 0.7;

/**
 * Draws the path over an excursion, in place: a cubic that keeps level and speed at both ends (Hermite). Tells how far the recording
 * leaves it.
 */
export function bridge(levels: Levels, path: Float64Array, { from, to }: Span): Excursion {
  const { time, mean, low, high, visible } = levels;
  const [before, after] = [from - 1, to + 1];
  const at = (bin: number, otherwise: number): number => mean[bin] ?? mean[otherwise]!;
  const [start, end] = [
    at(before, Math.min(after, mean.length - 1)),
    at(after, Math.max(0, before)),
  ];
  const origin = time[Math.max(0, before)]!;
  const seconds = time[Math.min(mean.length - 1, after)]! - origin || 1;
  const chord = (end - start) / seconds;
  const cubic = hermite(
    start,
    end,
    speedBeside(levels, before, -1, chord) * seconds,
    speedBeside(levels, after, 1, chord) * seconds,
  );
  let [below, above, swings, side, level] = [0, 0, 0, 0, start];
  for (let i = from; i <= to; i++) {
    path[i] = cubic((time[i]! - origin) / seconds);
    const [down, up] = [low[i]! - path[i]!, high[i]! - path[i]!];
    if (Math.max(-down, up) > Math.max(-below, above)) level = path[i]!;
    below = Math.min(below, down);
    above = Math.max(above, up);
    const own = down < -ofVisible * visible ? -1 : up > ofVisible * visible ? 1 : 0;
    if (own !== 0 && side !== 0 && own !== side) swings++;
    if (own !== 0) side = own;
  }
  return { from, to, below, above, level, swings };
}

/** Speed of the recording before a bin or after it; the bridge's own beyond the ends. */
function speedBeside(levels: Levels, bin: number, side: 1 | -1, chord: number): number {
  const { time, mean } = levels;
  if (bin < 0 || bin >= mean.length) return chord;
  let other = bin;
  const isNear = (): boolean =>
    Math.abs(time[other]! - time[bin]!) < speedOver || Math.abs(other - bin) < fewestBins;
  while (other + side >= 0 && other + side < mean.length && isNear()) other += side;
  if (other === bin) return chord;
  return lineThrough(levels, Math.min(bin, other), Math.max(bin, other)).speed;
}

function hermite(
  start: number,
  end: number,
  startSpeed: number,
  endSpeed: number,
): (part: number) => number {
  const slack = beyondEnds * Math.abs(end - start) + beyondLevel;
  const [low, high] = [Math.min(start, end) - slack, Math.max(start, end) + slack];
  return (x) => {
    const [square, cube] = [x * x, x * x * x];
    const level =
      (2 * cube - 3 * square + 1) * start +
      (cube - 2 * square + x) * startSpeed +
      (3 * square - 2 * cube) * end +
      (cube - square) * endSpeed;
    return Math.min(high, Math.max(low, level));
  };
}
