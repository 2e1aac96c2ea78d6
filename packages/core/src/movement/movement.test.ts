import { describe, expect, test } from 'vitest';
import { findRests, findStrokes } from './movement.js';

/** Levels at 1 ms through the given points [s, level], straight between them. */
function through(...points: readonly (readonly [number, number])[]) {
  const end = points[points.length - 1]![0];
  const time = Float64Array.from({ length: Math.round(end * 1000) + 1 }, (_, i) => i / 1000);
  const level = time.map((at) => {
    const next = Math.max(
      1,
      points.findIndex(([t]) => t >= at),
    );
    const [[t0, y0], [t1, y1]] = [points[next - 1]!, points[next]!];
    return y0 + ((y1 - y0) * (at - t0)) / (t1 - t0);
  });
  return { time, level };
}

describe('findRests', () => {
  test('finds the stretches without movement, not those shorter than 0.1 s', () => {
    const { time, level } = through([0, 0], [0.3, 0], [1, 0.7], [1.05, 0.7], [1.3, 1], [2, 1]);
    const rests = findRests(time, level, 0.01);
    expect(rests.map((rest) => rest.level.toFixed(2))).toEqual(['0.00', '1.00']);
    expect(rests[1]!.start).toBeCloseTo(1.3, 1);
    expect(rests[1]!.end).toBe(2);
  });
});

describe('findStrokes', () => {
  test('splits at turning points and overlooks small reversals', () => {
    const { time, level } = through([0, 0], [1, 1], [1.5, 0.5], [1.6, 0.53], [2, 0], [3, 0.9]);
    expect(
      findStrokes(time, level).map(({ direction, from, to }) => [
        direction,
        from.toFixed(2),
        to.toFixed(2),
      ]),
    ).toEqual([
      ['opening', '0.00', '1.00'],
      ['closing', '1.00', '0.00'],
      ['opening', '0.00', '0.90'],
    ]);
  });

  test('a recording at rest has none', () => {
    expect(
      findStrokes(...(Object.values(through([0, 0.4], [1, 0.4])) as [Float64Array, Float64Array])),
    ).toEqual([]);
  });
});
