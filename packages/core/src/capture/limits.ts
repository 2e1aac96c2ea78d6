import type { Seconds } from '../units.js';

/** What recorders and the files that they write do. Common practice, no source. */

/** So many values of a recording, taken evenly, tell what all do. */
const enough = 20_000;

/** How far apart the values lie of which enough are looked at. */
export function strideOver(count: number): number {
  return Math.max(1, Math.ceil(count / enough));
}

/** Of so many samples in a row, or blocks of samples, the middle and the scatter mean something. */
export const fewestSamples = 32;

/** Times between samples that are longer than so many intervals are gaps; stamps that are written late lie no farther off. */
export const gapIntervals = 3;

/** What befalls no more than this part of the rows is an accident. */
export const accident = 0.01;

/** Nearly all, of what noise and chance befall. */
export const nearlyAll = 0.9;

/** Values that are written in full differ by less than this part of all that was recorded where they are the same. */
export const writtenAlike = 1e-6;

/** Whole periods of mains of both 50 Hz and 60 Hz. */
export const mainsPeriods: Seconds = 0.2;

/**
 * A host that asks its recorder ten times a second leaves no more than this between stamps; what paused for longer, and for so many
 * intervals, ticks on from anywhere.
 */
export const asked: Seconds = 0.1;
const pauseIntervals = 8;

/** The longest time between stamps that is no pause. */
export function longestAsked(interval: Seconds): Seconds {
  return Math.max(asked, pauseIntervals * interval);
}
