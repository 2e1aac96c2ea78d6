import type { ClipLevels } from '../capture/clipLevels.js';
import type { EndVolts, HookUpLevels } from '../expectation/hookUpLevels.js';
import type { Rest } from '../movement/movement.js';
import type { ThrottleScale } from '../movement/throttleScale.js';

/** Parts off their nominal values shift a reading by this part of the source's voltage. */
const shift = 0.05;
/** A throttle lies at a stop within this part of the range that it moved through. */
const atStop = 0.15;

/**
 * Whether the output is that of leads on wrong terminals: it never came near its closed reading and moved through the range of another
 * connection; or it rested where it reads open at the beginning and at the end, as a throttle that its spring closes does not, and the
 * readings are those of exchanged feed leads.
 */
export function isMisconnected(
  path: Float64Array,
  rests: readonly Rest[],
  { connections, exchanged, source }: HookUpLevels,
  { closed, span }: ThrottleScale,
  clip: ClipLevels,
): boolean {
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
  if (isClipped) return false;
  if (!near(atClosed, closed) && connections.some(fits)) return true;
  const [first, last] = [rests[0], rests[rests.length - 1]];
  const restsOpen =
    first !== undefined &&
    last !== first &&
    [first, last!].every(({ level }) => level > high - atStop * (high - low));
  return (
    restsOpen && exchanged !== undefined && near(volts(high), exchanged.closed) && near(volts(low), exchanged.open)
  );
}
