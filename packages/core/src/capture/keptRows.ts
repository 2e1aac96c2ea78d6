import type { Sweep } from './sweep.js';

/** Some rows of a sweep, by their numbers, with their supply where it was recorded. */
export function keptRows(sweep: Sweep, rows: ArrayLike<number>): Sweep {
  const kept = (values: Float64Array): Float64Array =>
    Float64Array.from(rows, (row) => values[row]!);
  const { time, signal, supply } = sweep;
  return {
    ...sweep,
    time: kept(time),
    signal: kept(signal),
    ...(supply && { supply: kept(supply) }),
  };
}
