import type { Seconds } from '../units.js';

/**
 * How the times of the samples were taken: as `stamped`, or `even`, as a clock that ticks evenly and whose stamps were written coarse,
 * late or several under one; `spread`, evenly between the stamps that several rows bear.
 */
export type Clock = 'stamped' | 'even' | 'spread';

/** What was assumed of a recording's stamps before it was judged. */
export interface TakenStamps {
  /** Which clock the samples were taken to lie on. */
  readonly clock: Clock;
  /** Farthest that a sample was taken to lie from its stamp, by another clock than the `stamped` one, s, 0 or more. */
  readonly moved: Seconds;
  /** How many stamps bear two rows that were taken for the lowest and the highest reading of an interval; 0 where rows are no such pairs. */
  readonly pairs: number;
  /** How many stamps strayed alone, and were taken to lie between their neighbours; 0 or more. */
  readonly strayed: number;
  /** How many times the clock began anew while the signal went on; 0 or more. */
  readonly restarts: number;
}

/** Of stamps that are the times of the samples. */
export const asStamped: TakenStamps = {
  clock: 'stamped',
  moved: 0,
  pairs: 0,
  strayed: 0,
  restarts: 0,
};
