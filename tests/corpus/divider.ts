import type { Ohms, Volts } from '@truesweep/core';

/** The parts of a hook-up. */
export interface Parts {
  readonly volts: Volts;
  readonly limiter: Ohms;
  readonly track: Ohms;
  readonly closed: number;
  readonly open: number;
  readonly pullDown: Ohms;
  readonly pullUp: Ohms;
  /** What the pull-up goes to; the source where left out. */
  readonly pullUpVolts?: Volts;
}

/** Resistance that a fault adds: in the ground's leg, in the supply's, at the wiper. */
export interface Legs {
  readonly below: Ohms;
  readonly above: Ohms;
  readonly contact: Ohms;
}

export const noLegs: Legs = { below: 0, above: 0, contact: 0 };

/** The loaded divider: the track seen from the wiper, Thévenin, against the load. */
export function divided(parts: Parts, position: number, legs: Legs): Volts {
  const down = position * parts.track + legs.below;
  const up = (1 - position) * parts.track + parts.limiter + legs.above;
  const ohms = (down * up) / (down + up) + legs.contact + 1e-6;
  const upVolts = parts.pullUpVolts ?? parts.volts;
  const feed = (parts.volts * down) / (down + up) / ohms + upVolts / parts.pullUp;
  return feed / (1 / ohms + 1 / parts.pullDown + 1 / parts.pullUp);
}
