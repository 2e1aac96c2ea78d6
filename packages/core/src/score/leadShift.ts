import type { Departure } from '../departures/departure.js';
import { isJump } from '../departures/isJump.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Levels } from '../movement/levels.js';
import type { Rest } from '../movement/movement.js';
import { stopNear } from '../movement/stopsOf.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import { endOfTrack } from './stepTravel.js';

/** A step is measured within this part of it: the throttle moves on meanwhile. */
const measured = 0.05;
/** No more is told, nats: other things shift a signal alike. */
const surest = 5;

/**
 * What the stops' readings before and after a step say of a feed lead that came to resist: then every reading moves toward the other lead's
 * end, in proportion to its distance from there. A rotor that slips moves each reading alike, or none at the track's end; a crack none.
 *
 * @returns Logarithm of the odds for a lead, 0 where no stop was read before and after it.
 */
export function leadShift(
  step: Departure,
  departures: readonly Departure[],
  rests: readonly Rest[],
  { time, mean, visible }: Levels,
  expected: Expectation,
  scale: ThrottleScale,
): number {
  const jumps = departures.filter(({ kind }) => isJump(kind));
  const at = jumps.indexOf(step);
  const since = time[jumps[at - 1]?.to ?? 0]!;
  const until = time[jumps[at + 1]?.from ?? time.length - 1]!;
  const before = rests.filter(({ start, end }) => start >= since && end <= time[step.from]!);
  const after = rests.filter(({ start, end }) => start >= time[step.to]! && end <= until);
  const variance = (measured * step.depth) ** 2 + (visible / 4) ** 2;
  const level = mean[step.from]!;
  const ends = [onScale(scale, 0), onScale(scale, expected.circuit.source.volts)];
  let asSlip = 0;
  const asLead = ends.map(() => 0);
  for (const stop of [0, 1] as const) {
    const [was, is] = [stopNear(stop, before), stopNear(stop, after)];
    if (was === undefined || is === undefined) continue;
    const misfit = (moved: number): number => (is - was - moved) ** 2 / (2 * variance);
    const isAtEnd = Math.abs(is - endOfTrack(expected, scale, stop)) <= visible;
    asSlip += isAtEnd ? 0 : Math.min(misfit(step.depth), misfit(0));
    for (const [i, end] of ends.entries())
      asLead[i]! += misfit((step.depth * (end - was)) / (end - level));
  }
  return Math.max(-surest, Math.min(surest, asSlip - Math.min(...asLead)));
}
