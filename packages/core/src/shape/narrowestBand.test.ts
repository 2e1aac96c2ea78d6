import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { narrowestBand } from './narrowestBand.js';

/** The best height over all lines through two points, each tried with every point: no hull, no order. */
function byEveryPair(x: Float64Array, y: Float64Array): number {
  let best = Infinity;
  for (let a = 0; a < x.length; a++) {
    for (let b = 0; b < a; b++) {
      if (x[a] === x[b]) continue;
      const slope = (y[a]! - y[b]!) / (x[a]! - x[b]!);
      const rest = Array.from(y, (value, i) => value - slope * x[i]!);
      best = Math.min(best, (Math.max(...rest) - Math.min(...rest)) / 2);
    }
  }
  return best;
}

const coordinate = fc.oneof(
  fc.integer({ min: -4, max: 4 }),
  fc.double({ min: -10, max: 10, noNaN: true }),
);

/** The same place read again may differ in its last figures. */
const lastFigures = fc.constantFrom(0, 0, 1e-16, -1e-16, 3e-15);

test('finds what trying every pair of points finds, and holds it by three points that alternate', () => {
  const points = fc.array(fc.tuple(coordinate, coordinate, lastFigures), {
    minLength: 2,
    maxLength: 25,
  });
  fc.assert(
    fc.property(points, (list) => {
      const x = Float64Array.from(list, ([at, , more]) => Math.round(1e3 * at) / 1e3 + more);
      const y = Float64Array.from(list, ([, at]) => at);
      const band = narrowestBand(x, y);
      const spread = Math.max(...x) - Math.min(...x);
      if (spread < 1e-14) return;
      const { line, deviation, held, weights } = band!;
      const rest = Array.from(y, (value, i) => value - line.intercept - line.slope * x[i]!);
      const rounding = 1e-12 * (1 + Math.abs(line.slope) * 10 + Math.abs(line.intercept));
      expect(Math.max(...rest.map(Math.abs))).toBeLessThanOrEqual(deviation + rounding);
      expect(Math.abs(deviation - byEveryPair(x, y))).toBeLessThan(rounding);
      // Chebyshev's criterion: equal deviations of alternating sign at three places in order prove the line best.
      const order = Array.from(x.keys()).sort((a, b) => x[a]! - x[b]!);
      const signsFrom = (first: number) => {
        let [wanted, count] = [first, 0];
        for (const i of order) {
          if (wanted * rest[i]! < deviation - rounding) continue;
          wanted = -wanted;
          count++;
        }
        return count;
      };
      const alternations = Math.max(signsFrom(1), signsFrom(-1));
      // Two points above one another count as two signs, in either order; one such pair is enough.
      const isStacked = order.some((a) =>
        order.some(
          (b) =>
            Math.abs(x[a]! - x[b]!) < 1e-14 &&
            Math.abs(y[a]! - y[b]!) >= 2 * (deviation - rounding),
        ),
      );
      expect(deviation < 1e-9 || isStacked || alternations >= 3).toBe(true);
      for (const i of held) expect(Math.abs(Math.abs(rest[i]!) - deviation)).toBeLessThan(rounding);
      const sizes = weights.map(Math.abs);
      expect(sizes[0]! + sizes[1]! + sizes[2]!).toBeCloseTo(1, 14);
    }),
    { numRuns: 2000 * soak },
  );
});

test('holds the highest of corners that are level but for rounding', () => {
  const y = Float64Array.of(4.5e-12, 0, -4, 0, -4);
  const { line, deviation } = narrowestBand(Float64Array.of(0, 3, 0, 0, 2), y)!;
  expect(4.5e-12 - line.intercept).toBeLessThanOrEqual(deviation);
  expect(deviation).toBeCloseTo(2 + 2.25e-12, 14);
});

test('a curve passed several times, each time at places that differ in their last figures', () => {
  const x = Float64Array.from(
    { length: 4004 },
    (_, i) => ((i % 1001) / 1000) * (1 + 1e-16 * (i >> 10)),
  );
  const jittered = x.map((at, i) => at + ((i * 7919) % 5) * 1e-17);
  const { deviation, line } = narrowestBand(
    jittered,
    jittered.map((at) => at * at),
  )!;
  expect(deviation).toBeCloseTo(1 / 8, 6);
  expect(line.slope).toBeCloseTo(1, 6);
});

test('one place gives no line', () => {
  expect(narrowestBand(Float64Array.of(2, 2), Float64Array.of(0, 1))).toBeUndefined();
});

test('places that differ by less than a slope can tell make no NaN', () => {
  const x = Float64Array.of(0, -1, -5e-324);
  expect(narrowestBand(x, Float64Array.of(0, 0, -1))).toMatchObject({ deviation: 0.5 });
  expect(narrowestBand(Float64Array.of(0, 5e-324), Float64Array.of(0, 1))).toBeUndefined();
});

test('a hundred thousand points take no square of that', () => {
  const x = Float64Array.from({ length: 100_000 }, (_, i) => (i * 7919) % 100_000);
  const band = narrowestBand(
    x,
    x.map((at) => (at / 1e5) ** 2),
  )!;
  // x² on 0…1 lies within 1/8 of x − 1/8; the last point is missing by 1e-5.
  expect(band.deviation).toBeCloseTo(0.125, 4);
});
