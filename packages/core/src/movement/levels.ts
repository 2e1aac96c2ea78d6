import type { Seconds } from '../units.js';

/** The levels of a recording, bin by bin, as fractions of the span above the closed reading. */
export interface Levels {
  readonly time: Float64Array;
  readonly interval: Seconds;
  /** How far a bin's outermost samples lie from its middle, in bins: 0 for single samples, nearly ½ for many. */
  readonly withinBin: number;
  readonly mean: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Where the recording, with anything short taken out of it, lay still. */
  readonly still: readonly number[];
  /** Rest level of the load; undefined where nothing pulls a lifted wiper. */
  readonly rest: number | undefined;
  /** The smallest visible departure. */
  readonly visible: number;
  /** The ends of the recorder's range, infinite where it has none. */
  readonly clip: { readonly low: number; readonly high: number };
  /** Standard deviation of the noise of a bin's mean, and of a single sample. */
  readonly noise: number;
  readonly sampleNoise: number;
  readonly perBin: number;
}
