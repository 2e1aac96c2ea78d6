import type { Seconds } from '../units.js';

/** What was done to the sensor over a stretch of the recording. */
export interface Stretch {
  readonly kind: 'sweep' | 'rest' | 'harness-flexed' | 'housing-tapped' | 'warmed';
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
}

/** A sweep as it may be handed in: its columns are copied once where they are not Float64Arrays already. */
export type SweepLike = Pick<Sweep, 'stretches'> &
  Readonly<Record<'time' | 'signal', ArrayLike<number>>> & {
    readonly supply?: ArrayLike<number>;
  };
