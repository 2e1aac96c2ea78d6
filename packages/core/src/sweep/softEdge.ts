import type { Seconds } from '../units.js';
import type { Excursion } from './departure.js';
import type { Levels } from './levels.js';
import type { Piece } from './pieces.js';

/** A lead charges, and a foreign pulse dies away, within this time. */
const longestSoft: Seconds = 0.04;
/** Back on the path counts what stays there for this long. */
const stays: Seconds = 0.006;

/**
 * The excursion that one sudden edge and a gradual return make, before the edge or after it: a lead that
 * discharges before its contact comes back, or a pulse that dies away. Nothing where the signal stays on its new line.
 */
export function softEdge(levels: Levels, before: Piece, after: Piece): Excursion | undefined {
  return (
    gradual(levels, before.end, before.to, after.from, after.to, 1) ??
    gradual(levels, after.start, after.from, before.to, before.from, -1)
  );
}

/** Follows a piece away from its edge until it meets the line that the other piece was on. */
function gradual(
  { time, mean, visible, interval }: Levels,
  line: Piece['end'],
  origin: number,
  edge: number,
  last: number,
  step: 1 | -1,
): Excursion | undefined {
  const residual = (i: number): number =>
    mean[i]! - line.level - (line.speed ?? 0) * (time[i]! - time[origin]!);
  const depth = residual(edge);
  const stay = Math.max(1, Math.round(stays / interval));
  for (let i = edge; step * (last - i) >= stay; i += step) {
    if (Math.abs(time[i]! - time[edge]!) > longestSoft) return undefined;
    if (Math.abs(residual(i)) > visible / 2) continue;
    if (Math.abs(residual(i + step * stay)) > visible) continue;
    if (i === edge) return undefined;
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
