import { column, timeColumn } from '../column.js';
import { checkFields } from '../fields.js';
import { between } from '../guard.js';
import { checkLimits } from '../judgement/checkLimits.js';
import type { Seconds, Volts } from '../units.js';

/** The two levels that tell the states apart. */
export interface StateLevels {
  /** Below this it is in the lower state, V, −10¹² to 10¹². */
  readonly low: Volts;
  /** Above this it is in the upper state, V, not below `low`. Between the two levels it stays what it was. */
  readonly high: Volts;
  /** Changes that are farther apart than this are changes of their own and no bounce, s, 0 to 100; 0.05 when left out (common practice, no source). */
  readonly apart?: Seconds;
}

/** A change of state, or a moment in the other state, with its bounce. */
export interface StateChange {
  /** The first sample of it in the other state, s, by the recording's clock; any. */
  readonly time: Seconds;
  /** The state before. */
  readonly from: 'low' | 'high';
  /** The state after; the same as `from` for an interruption that led nowhere. */
  readonly to: 'low' | 'high';
  /** From its first to its last leap, s, 0 or more; 0 where it leapt once. */
  readonly bounced: Seconds;
  /** How many times it fell back to the state that it came from, 0 or more. */
  readonly returns: number;
  /** The longest time between two samples of it and to the one before, s, 0 or more: what is shorter can't be seen. */
  readonly resolution: Seconds;
}

/** The changes of a switch in a recording. */
export interface SwitchBounce {
  /** The state in which the recording begins; left out where it never leaves the place between the levels. */
  readonly begins?: 'low' | 'high';
  /** Every change in the order of time. */
  readonly changes: readonly StateChange[];
}

const level = between(-1e12, 1e12, 'V');

/**
 * When a switch changed in a recording, and how long and how often it bounced.
 *
 * Method: two levels with hysteresis between them; leaps that follow each other within `apart` are one change with its bounce. What happens between two samples
 * isn't seen.
 *
 * @param times Of the samples, s, never decreasing.
 * @param volts The signal at each, V.
 * @throws InputError at `times…`, `volts…` or `levels…`; `out-of-order` where `low` is above `high`.
 *
 * @example
 * const times = [0, 0.001, 0.002, 0.003, 0.004, 0.005];
 * const { changes } = switchBounce(times, [0.1, 4.9, 0.2, 2.5, 4.9, 4.9], { low: 1, high: 4 });
 * changes.length // => 1
 * changes[0].bounced // => ≈ 0.003
 * changes[0].returns // => 1
 */
export function switchBounce(
  times: ArrayLike<number>,
  volts: ArrayLike<number>,
  levels: StateLevels,
): SwitchBounce {
  const time = timeColumn(times, 'times');
  const signal = column(volts, time.length, 'volts');
  checkFields(levels, 'levels', {
    low: level,
    high: level,
    'apart?': between(0, 100, 's'),
  });
  checkLimits(levels, 'levels');
  const { low, high, apart = 0.05 } = levels;
  const { begins, leaps } = leapsOf(signal, low, high);
  if (begins === undefined) return { changes: [] };
  let from = begins;
  const changes: StateChange[] = [];
  for (let i = 0, next = 0; i < leaps.length; i = next) {
    next = i + 1;
    while (next < leaps.length && time[leaps[next]!]! - time[leaps[next - 1]!]! <= apart) next++;
    const change = changeOf(time, leaps.slice(i, next), from);
    changes.push(change);
    from = change.to;
  }
  return { begins, changes };
}

/** The state in which it begins, and the first sample in the other state at each leap. */
function leapsOf(signal: Float64Array, low: Volts, high: Volts) {
  let begins: 'low' | 'high' | undefined;
  let isHigh = false;
  const leaps: number[] = [];
  signal.forEach((at, i) => {
    if (at >= low && at <= high) return;
    const now = at > high;
    if (begins === undefined) begins = now ? 'high' : 'low';
    else if (now !== isHigh) leaps.push(i);
    isHigh = now;
  });
  return { begins, leaps } as { begins: 'low' | 'high' | undefined; leaps: readonly number[] };
}

function changeOf(time: Float64Array, leaps: readonly number[], from: 'low' | 'high'): StateChange {
  const [first, last] = [leaps[0]!, leaps.at(-1)!];
  let resolution = 0;
  for (let i = first; i <= last; i++) resolution = Math.max(resolution, time[i]! - time[i - 1]!);
  const other = from === 'low' ? 'high' : 'low';
  return {
    time: time[first]!,
    from,
    to: leaps.length % 2 === 1 ? other : from,
    bounced: time[last]! - time[first]!,
    returns: Math.floor(leaps.length / 2),
    resolution,
  };
}
