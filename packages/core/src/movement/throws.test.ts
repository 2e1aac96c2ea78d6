import { describe, expect, test } from 'vitest';
import type { Levels } from './levels.js';
import { plainLevels } from './plainLevels.js';
import { findThrows } from './throws.js';

/** Straight lines through points of time and level, a bin each millisecond. */
function through(...points: readonly (readonly [number, number])[]): Levels {
  const end = points[points.length - 1]![0];
  const time = Float64Array.from({ length: Math.round(end * 1000) + 1 }, (_, i) => i / 1000);
  const mean = time.map((at) => {
    const next = Math.max(
      1,
      points.findIndex(([when]) => when >= at),
    );
    const [[t0, y0], [t1, y1]] = [points[next - 1]!, points[next]!];
    return y0 + ((y1 - y0) * (at - t0)) / (t1 - t0);
  });
  return { ...plainLevels(time, mean), rest: -0.12 };
}

const throwsOf = (levels: Levels) => findThrows(levels, levels.mean);

describe('findThrows', () => {
  test('finds the fall, its first touch and the rebounds in order', () => {
    const bounce = [
      [0.54, 0],
      [0.55, 0.06],
      [0.56, 0],
      [0.565, 0.02],
      [0.57, 0],
      [1, 0],
    ] as const;
    const levels = through([0, 1], [0.5, 1], ...bounce);
    const [snap, ...others] = throwsOf(levels);
    expect(others).toEqual([]);
    expect(snap!.direction).toBe('closing');
    expect(levels.time[snap!.start]).toBeCloseTo(0.5, 1);
    expect(levels.time[snap!.touch]).toBeCloseTo(0.54, 2);
    expect(snap!.rebounds.map((top) => top.toFixed(2))).toEqual(['0.06', '0.02']);
  });

  test('is found as well where the throttle sticks, and on its way open', () => {
    const stuck = through([0, 0.6], [0.5, 0.6], [0.54, 0.1], [0.55, 0.16], [0.56, 0.1], [1, 0.1]);
    expect(throwsOf(stuck)).toMatchObject([
      { direction: 'closing', rebounds: [expect.closeTo(0.06, 2)] },
    ]);
    const rising = through([0, 0], [0.5, 0], [0.54, 1], [1, 1]);
    expect(throwsOf(rising)).toMatchObject([{ direction: 'opening' }]);
  });

  test('a closing by hand is none, nor what comes back up', () => {
    expect(throwsOf(through([0, 1], [0.5, 1], [1, 0], [1.5, 0]))).toEqual([]);
    const back = through([0, 1], [0.5, 1], [0.52, 0], [0.53, 0], [0.54, 1], [1, 1]);
    expect(throwsOf(back).filter(({ to }) => to < 0.5)).toEqual([]);
  });
});
