import { InputError } from '../errors.js';
import { mendedStamps } from './mendedStamps.js';
import type { Sweep } from './sweep.js';
import type { TakenStamps } from './takenStamps.js';

/** Stamps out of order by no more than so many intervals were written late; farther back is another recording. */
const mostIntervals = 3;

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
  const { time, signal, supply } = sweep;
  const count = time.length;
  let disordered = 0;
  let earliest = time[0]!;
  let latest = earliest;
  for (let i = 1; i < count; i++) {
    if (time[i]! < time[i - 1]!) disordered++;
    if (time[i]! < earliest) earliest = time[i]!;
    if (time[i]! > latest) latest = time[i]!;
  }
  const nothingMended = { disordered, strayed: 0, restarts: 0 };
  if (disordered === 0) return { sweep, ...nothingMended };
  const most = (mostIntervals * (latest - earliest)) / (count - 1);
  const back = time.findIndex((at, i) => i > 0 && time[i - 1]! - at > most);
  if (back > 0) {
    const mended = mendedStamps(time, signal);
    if (mended.time !== time) {
      const again = inOrder({ ...sweep, time: mended.time });
      const { strayed, restarts } = mended;
      return { sweep: again.sweep, disordered, strayed, restarts };
    }
    throw new InputError(
      'time-backwards',
      `sweep.time[${back}]`,
      `The time runs backwards from ${time[back - 1]} s to ${time[back]} s at sample ${back}; it must never decrease.`,
    );
  }
  const order = Uint32Array.from(time.keys()).sort((a, b) => time[a]! - time[b]! || a - b);
  const sorted = (values: Float64Array): Float64Array =>
    Float64Array.from(order, (i) => values[i]!);
  return {
    sweep: {
      ...sweep,
      time: sorted(time),
      signal: sorted(signal),
      ...(supply && { supply: sorted(supply) }),
    },
    ...nothingMended,
  };
}
