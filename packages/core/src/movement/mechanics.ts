import type { Seconds } from '../units.js';

/**
 * What hands, springs and contacts can do; common practice, no source. Levels are fractions of the span
 * between closed and open.
 */

/** A hand turns a throttle through its span in 0.2 s at the fastest: a smooth start and stop then peak at 1.9/0.2 s. */
export const handSpeed = 10;

/** The same stroke's peak of acceleration, spans per second squared: 5.8/(0.24 s)². */
export const handAcceleration = 100;

/** The time to either side of a moment within which a hand can't move by a departure, as a fraction of the span, from standstill. */
export function unseenHand(departure: number): Seconds {
  return Math.sqrt((2 * departure) / handAcceleration);
}

/** A contact opens or closes, and its lead's capacitance charges, within this time. */
export const edgeTime: Seconds = 2.5e-3;

/** A spring closes a throttle in this time at the least and at the most. */
export const shortestSpring: Seconds = 0.01;
export const longestSpring: Seconds = 0.15;

/** A rebound tops out below this part of the height. */
export const highestRebound = 0.45;

/** Rests this close to the outermost one are at the same stop. */
export const sameStop = 0.05;
