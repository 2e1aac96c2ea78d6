import type { Departure } from './departure.js';
import type { Levels } from './levels.js';

/** A series of levels with a straight bridge over each dropout and spike, from the bins beside it. */
export function bridged(
  series: Float64Array,
  { mean }: Levels,
  departures: readonly Departure[],
): Float64Array {
  const path = Float64Array.from(series);
  for (const { kind, from, to } of departures) {
    if (kind !== 'dropout' && kind !== 'spike') continue;
    const before = Math.max(0, from - 2);
    const after = Math.min(path.length - 1, to + 2);
    if (after === before) continue;
    const [start, end] = [mean[before]!, mean[after]!];
    for (let i = before; i <= after; i++) {
      path[i] = start + ((end - start) * (i - before)) / (after - before);
    }
  }
  return path;
}
