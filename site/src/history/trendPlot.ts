import {
  type Forecast,
  forecast,
  forecastEnd,
  type Seconds,
  type TrendPoint,
} from '@truesweep/core';
import type { QuantityHistory } from '@truesweep/history';
import { bandOf } from './bandOf.js';
import { thinnedPoints } from './thinnedPoints.js';

/** A place of a line with its band, at a time. */
export type BandPlace = Forecast & { readonly at: Seconds };

/** What is drawn of a quantity: fractions of the span over s since 1970. */
export interface TrendPlot {
  readonly points: readonly TrendPoint[];
  /** When the first value was recorded, and the last. */
  readonly from: Seconds;
  readonly to: Seconds;
  /** How many values there are: as many as points, or more. */
  readonly values: number;
  /** The fitted line over the record; empty where there is none. */
  readonly line: readonly BandPlace[];
  /** The forecast; empty where no change is told. */
  readonly ahead: readonly BandPlace[];
  readonly limits?: { readonly low: number; readonly high: number };
}

/** A band's edge bends; between so many places it is drawn straight. */
const pieces = 10;

/** What is drawn of a quantity; nothing where it has no value. */
export function trendPlot({ points, trend, limits }: QuantityHistory): TrendPlot | undefined {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return undefined;
  const end = trend?.changed ? forecastEnd(trend) : undefined;
  return {
    points: thinnedPoints(points).map(({ at, value, uncertainty }) => ({
      at,
      value,
      ...(uncertainty !== undefined && { uncertainty }),
    })),
    from: first.at,
    to: last.at,
    values: points.length,
    line: trend ? between(trend.from, trend.to).map((at) => ({ at, ...bandOf(trend, at) })) : [],
    ahead:
      trend && end !== undefined
        ? between(trend.to, end).flatMap((at) => {
            const expected = forecast(trend, at);
            return expected ? [{ at, ...expected }] : [];
          })
        : [],
    ...(limits && { limits }),
  };
}

function between(from: Seconds, to: Seconds): readonly Seconds[] {
  // The end itself, which a sum of parts may miss.
  return Array.from({ length: pieces + 1 }, (_, i) =>
    i === pieces ? to : from + ((to - from) * i) / pieces,
  );
}
