import type { Seconds } from '../units.js';

/** What contacts and leads do. Common practice, no source. */

/**
 * How often each begins in a recording of which nothing is known, per second: an open or dirty wiper once in ten
 * seconds, one that sticks in twenty, a lead, or a foreign pulse, in half a minute, a crack in a hundred seconds.
 */
const lead = 0.03;
export const rates = {
  lifted: 0.1,
  supply: lead,
  ground: lead,
  foreign: lead,
  shifting: 0.01,
  stuck: 0.05,
} as const;

/** How long each lasts, mean: an open contact; dirt under the wiper, a standstill; a foreign pulse, a crack's crossing. */
export const dwell = {
  open: 0.1,
  dirt: 0.02,
  brief: 0.01,
} as const satisfies Record<string, Seconds>;

/** A jump from one line to another is over within this time, and within this travel where it is slower than an edge. */
export const longestShift: Seconds = 0.03;
export const crackWidth = 0.015;
export const edgeTime: Seconds = 5e-3;

/** Parts within their tolerance shift levels by this part of what the source can make. */
export const tolerance = 0.03;

/** Certainty: no more is told, where no movement explains a recording at all, nats. */
export const surely = 1000;

/**
 * A broken contact's signal scatters about its level by this part of the way there, and parts off their nominal values shift it; dirt, or a
 * foreign voltage, changes it between samples by this part of the span, standard deviation.
 */
export const scatter = 0.02;

/** A track's own texture, as a part of the visible departure: turns of wire, wear, bends that the expected curve has not. */
export const texture = 0.06;

/** A signal that stuck catches up in so many of its readings. */
export const catchesUp = 0.2;

/** Longer than this a signal that stuck can't be told from a throttle that stands. */
export const longestStuck: Seconds = 0.1;
