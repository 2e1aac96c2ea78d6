import type { Forecast, Seconds, Trend } from '@truesweep/core';

/** Where one more value would lie at a time of the record, by the line that was fitted, with the trend's coverage: as core's `forecast` has it where a change is told. */
export function bandOf(trend: Trend, at: Seconds): Forecast {
  const { mean, meanAt, slope, slopeUncertainty, deviation, count, coverageFactor } = trend;
  const value = mean + slope * (at - meanAt);
  const ofLine = Math.hypot(deviation / Math.sqrt(count), slopeUncertainty * (at - meanAt));
  const half = coverageFactor * Math.hypot(deviation, ofLine);
  return { value, low: value - half, high: value + half };
}
