import type { Seconds } from '../units.js';

/**
 * What moves a throttle, and how: every fact of the mechanics that recordings are read by. Common practice, no source, but where one is
 * named. Speeds and accelerations are in spans, the distance between closed and open, per second and per second squared.
 */

/**
 * A hand's acceleration, standard deviation, and how long it lasts, after which a throttle that was not recorded may be anywhere: a slow one that opens a throttle in 0.6 s makes 16 (a smooth start
 * and stop peak at 5.8/T²), one that turns it through its span in 0.2 s makes 145. Spans per second squared.
 */
export const handAccelerations = { hand: 12, brisk: 120 } as const;
export const accelerationLasts: Seconds = 0.05;

/**
 * The acceleration of a spring, or of a finger that throws a throttle open, at the most: the whole way in 16 ms and longer; of a spring on
 * the lightest plates, in 8 ms (2/T²).
 */
export const throwAcceleration = 8000;
export const plungeAcceleration = 32_000;

/**
 * A finger that strikes the lever of a closed throttle, or a soft stop that lets go of what it held, sets it off at once, at this speed,
 * standard deviation: the whole way in 40 ms.
 */
export const strikeSpeed = 25;

/** A soft stop holds what strikes it for so long; and what is thrown flies for so long before anything can catch it. */
export const longestImpact: Seconds = 5e-3;

/**
 * A hand's speed, standard deviation, where nothing tells it; and what it changes by at once where a hand slips or starts, or a curve has a
 * knee. What is faster is thrown, and something may stop it at once.
 */
export const handSpeed = 2;

/**
 * How often each begins, per second. A recording of ten seconds has a few brisk turns, bends and falls; light plates and
 * flicks are rare.
 */
export const rates = { brisk: 5, fall: 1, plunge: 0.05, flick: 0.2, bend: 0.5 } as const;

/**
 * −ln of the chance that a thrown throttle meets a stop that is near, or landed where it fell unseen; and that it is caught where nothing
 * is, or lies beyond a stop in one bin.
 */
export const impactCost = 2;
export const oddPlaceCost = 4;

/** A rebound leaves a stop with this part of the speed at the most: metal on metal or plastic, 0.2 to 0.6 (from memory). */
export const restitution = 0.6;
/** Usually it leaves with half of it. */
export const usualRestitution = restitution / 2;

/** A stop gives way, and scatters, by this part of the span. */
export const stopScatter = 0.02;

/** The acceleration of a quick hand's turn, by which the path is smoothed and edges are told from a hand that stops. */
export const turnAcceleration = handAccelerations.brisk;

/** A hand that does not throw a throttle sets it off with this at the most, spans per second squared: nearly three times that of a stroke in 0.2 s. */
export const startAcceleration = 400;

/**
 * A quick hand takes 0.2 s for a stroke, and lingers at its end. What is shorter than this, or holds fewer intervals than that, may lie
 * between two strokes: it shows no dead output.
 */
export const shortestRecording: Seconds = 0.3;
export const fewestIntervals = 50;

/** Nobody takes longer than this for a whole stroke; a recording in which all do has its times in another unit. */
export const longestStroke: Seconds = 60;

/** The time to either side of a moment within which a hand can't move by a departure, as a fraction of the span, from standstill. */
export function unseenHand(departure: number): Seconds {
  return Math.sqrt((2 * departure) / turnAcceleration);
}

/** Rests this close to the outermost one are at the same stop, and what moves no farther has not moved. */
export const sameStop = 0.05;
/** A stop is sought this near to where it is expected; what lies farther off is more likely a hand's. */
export const farthestStop = 0.25;
