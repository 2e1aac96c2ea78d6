import { bisection } from '../bisection.js';
import { finiteBetween } from '../guard.js';
import type { Seconds } from '../units.js';
import { checkTrend } from './checkTrend.js';
import type { Trend } from './fitTrend.js';

/** What a trend makes expect of one more value. */
export interface Forecast {
  /** On the line, in the values' unit; any. */
  readonly value: number;
  /** Lower end of the band that one more value lies in with the trend's coverage, in that unit; any. */
  readonly low: number;
  /** Upper end of that band, in that unit; any, not below `low`. */
  readonly high: number;
}

/** When a trend meets a limit; each left out where that is not before the forecast ends. */
export interface LimitMet {
  /** The soonest that a value may meet it, s on the points' clock, any: the band's edge does; left out where that is not within the forecast. */
  readonly soonest?: Seconds;
  /** When the line meets it, s on that clock, any; left out where that is not within the forecast. */
  readonly line?: Seconds;
  /** From when on every value is expected beyond it, s on that clock, any: the band's other edge; left out where that is not within the forecast. */
  readonly latest?: Seconds;
}

/**
 * How long a forecast reaches: as far again as the values do, s on the points' clock.
 *
 * @param trend As `fitTrend` told it.
 *
 * @example
 * import { fitTrend } from '@truesweep/core/trend';
 * forecastEnd(fitTrend([0.512, 0.518, 0.524].map((value, at) => ({ at, value })))) // => 4
 */
export function forecastEnd(trend: Trend): Seconds {
  const { from, to } = checkTrend(trend);
  return to + (to - from);
}

/**
 * What one more value would be, were it to go on as it did, with the band that it lies in with the trend's coverage. No forecast is made where no change is told, and none beyond
 * the length of the record again.
 *
 * Method: prediction from a straight line, its uncertainty by JCGM 100:2008 (GUM), H.3, with that of one further value added.
 *
 * @param trend As `fitTrend` told it.
 * @param at When, s, on the points' clock: from the first value to as long after the last as that is after the first.
 * @returns Nothing where the trend tells no change.
 * @throws InputError `out-of-range` at `at`.
 *
 * @example
 * import { fitTrend } from '@truesweep/core/trend';
 * const worn = fitTrend([0.512, 0.518, 0.524, 0.531].map((value, at) => ({ at, value })));
 * forecast(worn, 4).value // => ≈ 0.537
 */
export function forecast(trend: Trend, at: Seconds): Forecast | undefined {
  const end = forecastEnd(trend);
  finiteBetween(at, trend.from, end, 'at', 's');
  return trend.changed ? bandAt(trend, at) : undefined;
}

/**
 * When values that go on as they did meet a limit, within the time that can be forecast.
 *
 * @param trend As `fitTrend` told it.
 * @param limit In the values' unit, on the side that they go to; any finite number up to ±10¹².
 * @returns Nothing where the trend tells no change, or leads away from the limit.
 * @throws InputError at `limit`.
 *
 * @example
 * import { fitTrend } from '@truesweep/core/trend';
 * const worn = fitTrend([0.512, 0.518, 0.524, 0.531].map((value, at) => ({ at, value })));
 * whenLimitIsMet(worn, 0.54).line // => ≈ 4.476
 * whenLimitIsMet(worn, 0.5) // => undefined
 */
export function whenLimitIsMet(trend: Trend, limit: number): LimitMet | undefined {
  checkTrend(trend);
  finiteBetween(limit, -1e12, 1e12, 'limit');
  if (!trend.changed) return undefined;
  const side = Math.sign(trend.slope);
  // Already beyond it at the first value: it leads away.
  if (side * (bandAt(trend, trend.from).value - limit) > 0) return undefined;
  const [near, far] = side > 0 ? (['high', 'low'] as const) : (['low', 'high'] as const);
  const soonest = meets(trend, near, side, limit);
  const line = meets(trend, 'value', side, limit);
  const latest = meets(trend, far, side, limit);
  return {
    ...(soonest !== undefined && { soonest }),
    ...(line !== undefined && { line }),
    ...(latest !== undefined && { latest }),
  };
}

function bandAt(trend: Trend, at: Seconds): Forecast {
  const { mean, meanAt, slope, slopeUncertainty, deviation, count, coverageFactor } = trend;
  const value = mean + slope * (at - meanAt);
  const half =
    coverageFactor *
    Math.hypot(deviation, deviation / Math.sqrt(count), slopeUncertainty * (at - meanAt));
  return { value, low: value - half, high: value + half };
}

/** When an edge of the band, which moves one way where a change is told, meets the limit; from the last value on. */
function meets(
  trend: Trend,
  edge: keyof Forecast,
  side: number,
  limit: number,
): Seconds | undefined {
  const isShort = (at: Seconds) => side * (bandAt(trend, at)[edge] - limit) < 0;
  const end = forecastEnd(trend);
  if (isShort(end)) return undefined;
  if (!isShort(trend.to)) return trend.to;
  return bisection(isShort, trend.to, end)[1];
}
