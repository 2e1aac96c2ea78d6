import type { Seconds } from '../units.js';

/** What was done to the sensor over a stretch of the recording. */
export interface Stretch {
  /**
   * A sweep or a rest as any, or a deliberate test: the harness flexed, the housing tapped, the sensor warmed, each with the throttle held
   * still.
   */
  readonly kind: 'sweep' | 'rest' | 'harness-flexed' | 'housing-tapped' | 'warmed';
  /** When it began, s, on the recording's own clock; from −10¹² to 10¹². */
  readonly start: Seconds;
  /** When it ended, s; not before `start`. */
  readonly end: Seconds;
}

/** What an instrument wrote where it had no reading: that it lies above its range, or below it, or nothing. */
export type NoReading = 'above-range' | 'below-range' | 'none';

/** Rows of a recording, one after the other, that hold no reading. */
export interface UnreadRows {
  /** What the instrument wrote in them. */
  readonly reading: NoReading;
  /** How many they are, 1 or more. */
  readonly rows: number;
  /** How many samples stand before them, 0 to all. */
  readonly after: number;
  /** Time of the first row, s, −10¹² to 10¹². */
  readonly start: Seconds;
  /** Time of the last row, s, `start` to 10¹². */
  readonly end: Seconds;
}

/**
 * A recorded sweep: what the instrument wrote down, sample by sample.
 *
 * `time` in seconds, never decreasing; `signal` in volts at the wiper's terminal; both of one length.
 * `supply`, where it was recorded, is the voltage across the sensor's end terminals at the same instants.
 */
export interface Sweep {
  /** Stamps of the samples, s, finite, 2 or more and not all the same. Samples out of order are put in order, and counted. */
  readonly time: Float64Array;
  /** Voltage at the wiper's terminal for each stamp, V, finite. */
  readonly signal: Float64Array;
  /** Voltage across the sensor's end terminals at the same instants, V, finite; when left out the source is taken to hold its voltage. */
  readonly supply?: Float64Array;
  /** What was done when, where it was noted. */
  readonly stretches?: readonly Stretch[];
  /** Rows without a reading, in their order; they are evidence too. None when left out. */
  readonly unread?: readonly UnreadRows[];
}

/** A sweep as it may be handed in: its columns are copied once where they are not Float64Arrays already. */
export type SweepLike = Pick<Sweep, 'stretches' | 'unread'> &
  Readonly<Record<'time' | 'signal', ArrayLike<number>>> & {
    /** Voltages across the end terminals, V, 0 or more; not recorded when left out. */
    readonly supply?: ArrayLike<number>;
  };
