import type { Fault } from './plan.js';

/** Where the wiper is: `onTrack` with a rotor that slipped, `wiper` also with the dead spots that it does not follow over. */
export interface WiperTravel {
  readonly onTrack: Float64Array;
  readonly wiper: Float64Array;
}

/**
 * The travel that the wiper stands at, which is the throttle's but for a rotor that slipped (another travel from a moment on) and
 * a dead spot (the wiper stays where it entered until the throttle has left the stretch).
 */
export function effectiveTravel(
  travel: Float64Array,
  step: number,
  faults: readonly Fault[],
): WiperTravel {
  let onTrack = travel;
  for (const fault of faults) if (fault.kind === 'slipped') onTrack = slipped(onTrack, step, fault);
  let wiper = onTrack;
  for (const fault of faults) if (fault.kind === 'dead-spot') wiper = frozen(wiper, fault);
  return { onTrack, wiper };
}

function slipped(
  travel: Float64Array,
  step: number,
  { time, shift }: Extract<Fault, { kind: 'slipped' }>,
): Float64Array {
  return travel.map((x, i) => (i * step >= time ? x + shift : x));
}

function frozen(
  travel: Float64Array,
  { from, to }: Extract<Fault, { kind: 'dead-spot' }>,
): Float64Array {
  const wiper = new Float64Array(travel.length);
  let held = 0;
  let inside = false;
  for (let i = 0; i < travel.length; i++) {
    const x = travel[i]!;
    const now = x > from && x < to;
    if (now && !inside) held = i > 0 && travel[i - 1]! >= to ? to : from;
    inside = now;
    wiper[i] = now ? held : x;
  }
  return wiper;
}
