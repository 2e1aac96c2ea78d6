import type { Circuit, Position } from '@truesweep/core';

/** Where the wiper stands at the stops. */
export const closedStop: Position = 0.1;
export const openStop: Position = 0.9;

/** The bench of the lessons, with nothing on its wiper. */
export const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: closedStop, openPosition: openStop },
  load: {},
};
