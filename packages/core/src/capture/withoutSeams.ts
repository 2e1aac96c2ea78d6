import { keptRows } from './keptRows.js';
import { stretchesOf } from './stretches.js';
import type { Sweep } from './sweep.js';

/**
 * Leaves out the row before a pause, with those that bear its stamp: an export that forms rows of several samples mixes both sides of the
 * pause in it.
 *
 * @returns The sweep itself where nothing paused.
 */
export function withoutSeams(sweep: Sweep): Sweep {
  const { time } = sweep;
  const stretches = stretchesOf(time);
  if (stretches.length === 1) return sweep;
  const rows: number[] = [];
  for (const [from, to] of stretches)
    for (let i = from; i < to; i++)
      if (to === time.length || time[i] !== time[to - 1]) rows.push(i);
  return keptRows(sweep, rows);
}
