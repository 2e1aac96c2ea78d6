import type { ClipLevels } from '../capture/clipLevels.js';
import type { ExpectedWindows, ReadingWindow } from '../expectation/expectedWindows.js';
import type { EndVolts, HookUpLevels } from '../expectation/hookUpLevels.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Rest } from '../movement/movement.js';
import type { ThrottleScale } from '../movement/throttleScale.js';
import type { Seconds } from '../units.js';

/** Parts off their nominal values shift a reading by this part of the source's voltage. */
const shift = 0.05;
/** A throttle lies at a stop within this part of the range that it moved through. */
const atStop = 0.15;
/** A rest belongs to a recording's beginning or end within this time. */
const edge: Seconds = 0.15;
/** So many falls with rebounds tell which stop the spring pulls to. */
const fewestFalls = 2;

/**
 * Whether the output is that of leads on wrong terminals: it never came near its closed reading and moved through the range of another
 * connection; or it lay at its open reading at the beginning and at the end, where a spring keeps no throttle, and the readings are those
 * of exchanged feed leads: surely where they are not the right ones as well, or the throttle was seen to fall open again and again.
 */
export function isMisconnected(
  { path, rests, snaps, flungOpen }: Movement,
  time: Float64Array,
  windows: ExpectedWindows,
  { connections, exchanged, source }: HookUpLevels,
  { closed, span }: ThrottleScale,
  clip: ClipLevels,
): 'no' | 'perhaps' | 'surely' {
  let low = path[0]!;
  let high = low;
  for (const level of path) {
    if (level < low) low = level;
    if (level > high) high = level;
  }
  const volts = (level: number): number => closed + level * span;
  const near = (one: number, other: number): boolean => Math.abs(one - other) <= shift * source;
  const least = Math.min(volts(low), volts(high));
  const most = Math.max(volts(low), volts(high));
  const fits = (one: EndVolts): boolean =>
    near(least, Math.min(one.closed, one.open)) && near(most, Math.max(one.closed, one.open));
  const atClosed = volts(low);
  const isClipped =
    near(atClosed, clip.low ?? Number.NaN) || near(atClosed, clip.high ?? Number.NaN);
  if (isClipped) return 'no';
  if (!near(atClosed, closed) && connections.some(fits)) return 'surely';
  const [first, last] = [rests[0], rests[rests.length - 1]];
  if (first === undefined || last === first || exchanged === undefined) return 'no';
  const isOpen = ({ level }: Rest): boolean => level > high - atStop * (high - low);
  const begins = first.start - time[0]! <= edge && isOpen(first);
  const ends = time[time.length - 1]! - last!.end <= edge && isOpen(last!);
  if (!begins || !ends || snaps.length > 0) return 'no';
  if (!near(volts(high), exchanged.closed) || !near(volts(low), exchanged.open)) return 'no';
  const isWithin = (reading: number, window: ReadingWindow): boolean =>
    reading >= window.low && reading <= window.high;
  const isRight = isWithin(volts(low), windows.closed) && isWithin(volts(high), windows.open);
  return !isRight || flungOpen >= fewestFalls ? 'surely' : 'perhaps';
}
