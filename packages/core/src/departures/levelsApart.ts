import type { Span } from './departure.js';

/** How far the levels that two departures go over lie apart: a jump leads from one level to another, whichever way it is gone over. */
export function levelsApart(path: Float64Array, one: Span, other: Span): number {
  const [a, b] = [path[one.from]!, path[one.to]!];
  const [c, d] = [path[other.from]!, path[other.to]!];
  return Math.max(0, Math.min(a, b) - Math.max(c, d), Math.min(c, d) - Math.max(a, b));
}
