import { checkFields, listOf } from '../fields.js';
import { between } from '../guard.js';
import { meanAndDeviation } from '../statistics/meanAndDeviation.js';
import { straightLine } from '../statistics/straightLine.js';
import { studentQuantile } from '../statistics/studentQuantile.js';
import type { Fraction, Seconds } from '../units.js';
import type { Scatter } from './pooledScatter.js';

/** A value at a time. */
export interface TrendPoint {
  /** When, s, since any moment that all points share; −10¹² to 10¹². */
  readonly at: Seconds;
  /** The value, any finite number up to ±10¹². */
  readonly value: number;
  /** Its standard uncertainty, in the unit of `value`, 0 or more; 0 when left out. */
  readonly uncertainty?: number;
}

/** How a trend is sought. */
export interface TrendOptions {
  /** Probability, 0.5 to 0.9999, that a slope of values that do not change lies within its expanded uncertainty; 0.95 when left out. */
  readonly coverage?: Fraction;
  /** What is known of such values' scatter from elsewhere, as `pooledScatter` tells it; nothing when left out. */
  readonly scatter?: Scatter;
}

/** A straight line through values over time, and how far it may be off. */
export interface Trend {
  /** How many values it rests on, 2 or more. */
  readonly count: number;
  /** Time of the first value, s; any. */
  readonly from: Seconds;
  /** Time of the last value, s; after `from`. */
  readonly to: Seconds;
  /** Change of the value with time, in its unit per second; any. */
  readonly slope: number;
  /** Standard uncertainty of the slope, in its unit, 0 or more. */
  readonly slopeUncertainty: number;
  /** Expanded uncertainty of the slope, in its unit, 0 or more. */
  readonly expanded: number;
  /** What the standard uncertainty is multiplied by for it: Student's t, a number above 0. */
  readonly coverageFactor: number;
  /** The probability that it was made for, 0.5 to 0.9999. */
  readonly coverage: Fraction;
  /** Degrees of freedom of the scatter: a number, 1 or more, or `Infinity`. */
  readonly degreesOfFreedom: number;
  /** Standard deviation of one value from the line, in its unit, 0 or more: what all that is known says, at least the stated uncertainties. */
  readonly deviation: number;
  /** The values' own scatter about the line; left out where there are two. */
  readonly own?: Scatter;
  /** Mean time of the values, s; any. */
  readonly meanAt: Seconds;
  /** Mean of the values, in their unit, any: the line goes through it at `meanAt`. */
  readonly mean: number;
  /** Whether the slope differs from 0 by more than its expanded uncertainty. */
  readonly changed: boolean;
}

const most = 1e12;
const points = listOf({
  at: between(-most, most, 's'),
  value: between(-most, most),
  'uncertainty?': between(0, most),
});

/** What rounding leaves of equal values, as a part of them. */
const rounding = 4 * Number.EPSILON;

/** As `pooledScatter` gives it. */
function degrees(value: unknown, path: string): void {
  if (value !== Infinity) between(0, 1e9)(value, path);
}

const optionRules = {
  'coverage?': between(0.5, 0.9999),
  'scatter?': { deviation: between(0, most), degreesOfFreedom: degrees },
};

/**
 * Whether values change with time: the straight line of least squares with the uncertainty of its slope.
 *
 * The scatter that this rests on is that of the values about their line; where more is known (`scatter`) both by their degrees of freedom; and it is
 * never less than their own, nor than the values' stated uncertainties, in the mean of their squares. So three values are needed, or two where the scatter of others is known.
 *
 * Method: JCGM 100:2008 (GUM), H.3, with the coverage factor of G.3.2; variances joined as in G. K. Smyth (2004), as for `pooledScatter` (from memory).
 *
 * @param given Values in one unit, in any order.
 * @returns Nothing where there are fewer than two times, or nothing is known of the scatter.
 * @throws InputError for values, uncertainties or options beyond their range.
 *
 * @example
 * const closed = [0.512, 0.513, 0.511, 0.513].map((value, season) => ({ at: season * 3.2e7, value, uncertainty: 0.001 }));
 * fitTrend(closed).changed // => false
 * const worn = [0.512, 0.518, 0.524, 0.531].map((value, season) => ({ at: season * 3.2e7, value, uncertainty: 0.001 }));
 * fitTrend(worn).changed // => true
 */
export function fitTrend(
  given: readonly TrendPoint[],
  options: TrendOptions = {},
): Trend | undefined {
  points(given, 'points');
  checkFields(options, 'options', optionRules);
  const { coverage = 0.95, scatter } = options;
  const count = given.length;
  if (count < 2) return undefined;
  const times = given.map(({ at }) => at);
  const line = straightLine(
    times,
    given.map(({ value }) => value),
  );
  if (!line) return undefined;
  const ownDegrees = count - 2;
  const others = scatter?.degreesOfFreedom ?? 0;
  const degreesOfFreedom = ownDegrees + others;
  if (degreesOfFreedom < 1) return undefined;
  const shared =
    others === Infinity
      ? scatter!.deviation ** 2
      : (ownDegrees * line.deviation ** 2 + others * (scatter?.deviation ?? 0) ** 2) /
        degreesOfFreedom;
  const stated = given.reduce((sum, { uncertainty = 0 }) => sum + uncertainty ** 2, 0) / count;
  const figures = rounding * given.reduce((most, { value }) => Math.max(most, Math.abs(value)), 0);
  const deviation = Math.sqrt(
    // A sensor that scatters more than its like is not told by theirs.
    Math.max(shared, line.deviation ** 2, stated, figures ** 2),
  );
  const { mean: meanAt } = meanAndDeviation(times);
  const spread = Math.sqrt(times.reduce((sum, at) => sum + (at - meanAt) ** 2, 0));
  const slopeUncertainty = deviation / spread;
  const coverageFactor = studentQuantile((1 - coverage) / 2, degreesOfFreedom);
  const expanded = coverageFactor * slopeUncertainty;
  return {
    count,
    // Not as arguments of one call: a browser worker's stack holds fewer than a list may have.
    from: times.reduce((one, other) => Math.min(one, other)),
    to: times.reduce((one, other) => Math.max(one, other)),
    slope: line.slope,
    slopeUncertainty,
    expanded,
    coverageFactor,
    coverage,
    degreesOfFreedom,
    deviation,
    ...(ownDegrees > 0 && {
      own: { deviation: line.deviation, degreesOfFreedom: ownDegrees },
    }),
    meanAt,
    mean: meanAndDeviation(given.map(({ value }) => value)).mean,
    changed: Math.abs(line.slope) > expanded,
  };
}
