import type { EndVolts, HookUpLevels } from '../expectation/hookUpLevels.js';
import type { ThrottleScale } from '../sweep/throttleScale.js';

/** Parts off their nominal values shift a reading by this part of the source's voltage. */
const shift = 0.05;

/** Whether the range that the output moved through is not the right one but that of leads on wrong terminals. */
export function isMisconnected(
  path: Float64Array,
  { connections, source }: HookUpLevels,
  { closed, span }: ThrottleScale,
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
  return !fits({ closed, open: closed + span }) && connections.some(fits);
}
