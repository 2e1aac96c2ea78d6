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
}
