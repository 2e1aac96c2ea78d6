import type { ClipLevels } from '../capture/clipLevels.js';
import type { EndVolts, HookUpLevels } from '../expectation/hookUpLevels.js';
import type { ThrottleScale } from '../movement/throttleScale.js';

/** Parts off their nominal values shift a reading by this part of the source's voltage. */
const shift = 0.05;

/** Whether the output never came near its closed reading, and moved through the range of leads on wrong terminals. */
export function isMisconnected(
  path: Float64Array,
  { connections, source }: HookUpLevels,
  { closed, span }: ThrottleScale,
  clip: ClipLevels,
): boolean {
  let low = path[0]!;
  let high = low;
  for (const level of path) {
    if (level < low) low = level;
    if (level > high) high = level;
  }
  const ends = [closed + low * span, closed + high * span].sort((a, b) => a - b) as [
    number,
    number,
  ];
  const near = (volts: number, other: number): boolean => Math.abs(volts - other) <= shift * source;
  const fits = (one: EndVolts): boolean =>
    near(ends[0], Math.min(one.closed, one.open)) && near(ends[1], Math.max(one.closed, one.open));
  const atClosed = span > 0 ? ends[0] : ends[1];
  const isClipped =
    near(atClosed, clip.low ?? Number.NaN) || near(atClosed, clip.high ?? Number.NaN);
  return !isClipped && !near(atClosed, closed) && connections.some(fits);
}
