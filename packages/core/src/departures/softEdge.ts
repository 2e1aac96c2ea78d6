import { turnAcceleration } from '../motion/limits.js';
import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';
import type { Excursion } from './departure.js';
import { farther } from './farther.js';
import { lineThrough } from './lineThrough.js';

/** A lead charges, and a foreign pulse dies away, within this time. */
const longestSoft: Seconds = 0.04;
/** Back on the path counts what stays there for this long. */
const stays: Seconds = 0.006;
/** The path's line is taken over this time. */
const lineOver: Seconds = 0.02;

/**
 * The excursion that one sudden edge and a gradual return make, before the edge or after it: a lead that
 * discharges before its contact comes back, or a pulse that dies away. Nothing where the signal stays on its new line.
 *
 * @param before Last bin before the edge.
 * @param after First bin after it.
 */
export function softEdge(levels: Levels, before: number, after: number): Excursion | undefined {
  return gradual(levels, before, after, 1) ?? gradual(levels, after, before, -1);
}

/** Follows the signal from an edge on until it meets the line that it was on at the edge's other side. */
function gradual(
  levels: Levels,
  origin: number,
  edge: number,
  step: 1 | -1,
): Excursion | undefined {
  const { time, mean, visible, interval, noise } = levels;
  const length = Math.max(3, Math.round(lineOver / interval));
  const [one, other] = [origin - step, origin - step * length].sort((a, b) => a - b) as [
    number,
    number,
  ];
  const line = lineThrough(levels, Math.max(0, one), Math.min(mean.length - 1, other));
  if (line.bins < 3 || line.leverage === 0) return undefined;
  const residual = (i: number): number =>
    mean[i]! - line.level - line.speed * (time[i]! - line.time);
  // The edge itself may fall into the first bin.
  const next = Math.min(mean.length - 1, Math.max(0, edge + step));
  const depth = farther(residual(edge), residual(next));
  const stay = Math.max(1, Math.round(stays / interval));
  for (let i = edge; i + step * stay >= 0 && i + step * stay < mean.length; i += step) {
    const seconds = Math.abs(time[i]! - line.time);
    if (Math.abs(time[i]! - time[edge]!) > longestSoft) return undefined;
    if (Math.abs(depth) < visible + (2 * noise * seconds) / line.leverage) return undefined;
    if (Math.abs(residual(i)) > visible / 2) continue;
    if (Math.abs(residual(i + step * stay)) > visible) continue;
    if (i === edge) return undefined;
    // What a hand that speeds up or slows down can do beside a step is no gradual return.
    const gone = Math.abs(time[i]! - time[edge]!);
    if (Math.abs(depth - residual(i)) <= (turnAcceleration * gone * gone) / 2) return undefined;
    const [from, to] = step > 0 ? [edge, i - 1] : [i + 1, edge];
    return {
      from,
      to,
      below: Math.min(0, depth),
      above: Math.max(0, depth),
      level: mean[edge]! - depth,
      swings: 0,
    };
  }
  return undefined;
}
