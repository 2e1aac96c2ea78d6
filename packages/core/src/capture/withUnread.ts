import type { Volts } from '../units.js';
import type { Recorder } from './captureQuality.js';
import type { Sweep, UnreadRows } from './sweep.js';

/**
 * Puts rows beyond the recorder's range among the samples, at the end of the range that they lie beyond: the signal went as far as that
 * at the least. Rows whose reading nobody knows stay out.
 *
 * @returns The sweep with them, and how many rows are left of which nothing is known.
 */
export function withUnread(
  sweep: Sweep,
  range: Recorder['range'],
): { readonly sweep: Sweep; readonly unknown: number } {
  const { unread = [], ...read } = sweep;
  if (unread.length === 0) return { sweep, unknown: 0 };
  const known = unread.filter(({ reading }) => levelOf(reading, range) !== undefined);
  const added = rowsOf(known);
  const unknown = rowsOf(unread) - added;
  if (added === 0) return { sweep: read, unknown };
  const { time, signal, supply } = read;
  const count = time.length + added;
  const whole = {
    time: new Float64Array(count),
    signal: new Float64Array(count),
    ...(supply && { supply: new Float64Array(count) }),
  };
  let [from, at] = [0, 0];
  const copyUntil = (to: number): void => {
    whole.time.set(time.subarray(from, to), at);
    whole.signal.set(signal.subarray(from, to), at);
    whole.supply?.set(supply!.subarray(from, to), at);
    at += to - from;
    from = to;
  };
  for (const { reading, rows, after, start, end } of known) {
    copyUntil(after);
    const apart = rows > 1 ? (end - start) / (rows - 1) : 0;
    for (let row = 0; row < rows; row++, at++) {
      whole.time[at] = start + row * apart;
      whole.signal[at] = levelOf(reading, range)!;
      if (whole.supply) whole.supply[at] = supply![Math.max(0, after - 1)]!;
    }
  }
  copyUntil(time.length);
  return { sweep: { ...read, ...whole }, unknown };
}

/** The end of the range that a reading lies beyond, where both are known. */
function levelOf(reading: UnreadRows['reading'], range: Recorder['range']): Volts | undefined {
  return reading === 'above-range'
    ? range?.high
    : reading === 'below-range'
      ? range?.low
      : undefined;
}

function rowsOf(unread: readonly UnreadRows[]): number {
  return unread.reduce((sum, { rows }) => sum + rows, 0);
}
