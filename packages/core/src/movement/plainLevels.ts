import type { Levels } from './levels.js';

/** The levels of a recording without a range's end and with next to no noise, a bin for each sample: for tests. */
export function plainLevels(time: Float64Array, mean: Float64Array): Levels {
  return {
    time,
    interval: time[1]! - time[0]!,
    withinBin: 0,
    mean,
    low: mean,
    high: mean,
    still: [],
    rest: -0.1,
    visible: 0.015,
    clip: { low: -Infinity, high: Infinity },
    noise: 1e-4,
    sampleNoise: 1e-4,
    perBin: 1,
  };
}
