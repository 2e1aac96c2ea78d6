import { InputError } from '../errors.js';
import { keptRows } from './keptRows.js';
import { gapIntervals } from './limits.js';
import { mendedStamps } from './mendedStamps.js';
import type { Sweep } from './sweep.js';
import type { TakenStamps } from './takenStamps.js';

/**
 * Puts samples whose stamps were written out of order back in order.
 *
 * @returns The sweep itself where nothing was out of order, how many samples were, and which stamps were mended before.
 * @throws InputError `time-backwards` where the time runs back by more than three intervals.
 */
export function inOrder(
  sweep: Sweep,
): { readonly sweep: Sweep; readonly disordered: number } & Pick<
  TakenStamps,
  'strayed' | 'restarts'
> {
  const { time, signal } = sweep;
  let disordered = 0;
  for (let i = 1; i < time.length; i++) if (time[i]! < time[i - 1]!) disordered++;
  if (disordered === 0) return { sweep, disordered, strayed: 0, restarts: 0 };
  const back = farBack(time);
  if (back < 0) return { sweep: sorted(sweep), disordered, strayed: 0, restarts: 0 };
  const { strayed, restarts, ...mended } = mendedStamps(time, signal);
  if (strayed + restarts === 0 || farBack(mended.time) >= 0)
    throw new InputError(
      'time-backwards',
      `sweep.time[${back}]`,
      `The time runs backwards from ${time[back - 1]} s to ${time[back]} s at sample ${back}; it must never decrease.`,
    );
  return { sweep: sorted({ ...sweep, time: mended.time }), disordered, strayed, restarts };
}

/** The first sample whose time runs back by more than stamps that were written late do, −1 where there is none: farther back is another recording. */
function farBack(time: Float64Array): number {
  let earliest = time[0]!;
  let latest = earliest;
  for (const at of time) {
    if (at < earliest) earliest = at;
    if (at > latest) latest = at;
  }
  const most = (gapIntervals * (latest - earliest)) / (time.length - 1);
  return time.findIndex((at, i) => i > 0 && time[i - 1]! - at > most);
}

function sorted(sweep: Sweep): Sweep {
  const { time } = sweep;
  return keptRows(
    sweep,
    Uint32Array.from(time.keys()).sort((a, b) => time[a]! - time[b]! || a - b),
  );
}
