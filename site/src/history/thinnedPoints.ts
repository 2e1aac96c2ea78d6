import type { TrendPoint } from '@truesweep/core';

/** No drawing holds more points: it has fewer columns of pixels. */
const columns = 300;

/** Of more points than a drawing holds the lowest and the highest of each stretch of time; by time. */
export function thinnedPoints<Point extends TrendPoint>(
  points: readonly Point[],
): readonly Point[] {
  const [from = 0, to = 0] = [points[0]?.at, points.at(-1)?.at];
  if (points.length <= 2 * columns) return points;
  const extremes = new Map<number, { low: Point; high: Point }>();
  for (const point of points) {
    const column = Math.floor((columns * (point.at - from)) / (to - from || 1));
    const { low = point, high = point } = extremes.get(column) ?? {};
    extremes.set(column, {
      low: point.value < low.value ? point : low,
      high: point.value > high.value ? point : high,
    });
  }
  return [...extremes.values()].flatMap(({ low, high }) =>
    low === high ? [low] : low.at < high.at ? [low, high] : [high, low],
  );
}
