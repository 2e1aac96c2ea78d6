import type { Seconds } from '../units.js';

/** What was done to the sensor over a stretch of the recording. */
export interface Stretch {
  readonly kind: 'sweep' | 'rest' | 'harness-flexed' | 'housing-tapped' | 'warmed';
  readonly start: Seconds;
  readonly end: Seconds;
}

/** What an instrument wrote where it had no reading: that it lies above its range, or below it, or nothing. */
export type NoReading = 'above-range' | 'below-range' | 'none';

/** Rows of a recording, one after the other, that hold no reading. */
export interface UnreadRows {
  readonly reading: NoReading;
  readonly rows: number;
  /** How many samples stand before them. */
  readonly after: number;
  /** Times of the first row and the last. */
  readonly start: Seconds;
  readonly end: Seconds;
}

/**
 * A recorded sweep: what the instrument wrote down, sample by sample.
 *
 * `time` in seconds, never decreasing; `signal` in volts at the wiper's terminal; both of one length.
 * `supply`, where it was recorded, is the voltage across the sensor's end terminals at the same instants.
 */
export interface Sweep {
  readonly time: Float64Array;
  readonly signal: Float64Array;
  readonly supply?: Float64Array;
  /** What was done when, where it was noted. */
  readonly stretches?: readonly Stretch[];
  /** Rows without a reading, in their order; they are evidence too. */
  readonly unread?: readonly UnreadRows[];
}
