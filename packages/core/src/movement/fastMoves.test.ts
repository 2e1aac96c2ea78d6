import { describe, expect, test } from 'vitest';
import { findFastMoves } from './fastMoves.js';
import type { Levels } from './levels.js';
import { plainLevels } from './plainLevels.js';

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

describe('findFastMoves', () => {
  const bounce = [
    [0.54, 0],
    [0.55, 0.06],
    [0.56, 0],
    [0.565, 0.02],
    [0.57, 0],
    [1, 0],
  ] as const;

  test('finds the fall, its first touch and the rebounds in order', () => {
    const levels = through([0, 1], [0.5, 1], ...bounce);
    const [snap, ...others] = findFastMoves(levels);
    expect(others).toEqual([]);
    expect(snap!.direction).toBe('closing');
    expect(levels.time[snap!.start]).toBeCloseTo(0.5, 2);
    expect(levels.time[snap!.touch]).toBeCloseTo(0.54, 2);
    expect(snap!.rebounds.map((top) => top.toFixed(2))).toEqual(['0.06', '0.02']);
  });

  test('is found as well where the throttle sticks, on a signal that rises as it closes, and from half open', () => {
    const shifted = through([0, 0.6], [0.5, 0.6], [0.54, 0.1], [0.55, 0.16], [0.56, 0.1], [1, 0.1]);
    expect(findFastMoves(shifted)).toMatchObject(
      [{ direction: 'closing', rebounds: [0.06] }].map((one) => ({
        ...one,
        rebounds: [expect.closeTo(0.06, 2)],
      })),
    );
    const rising = through([0, 0], [0.5, 0], [0.54, 1], [1, 1]);
    expect(findFastMoves(rising)).toMatchObject([{ direction: 'opening' }]);
  });

  test('is found where the closed stop lies at the level of a lifted wiper, and beyond a jump of the track', () => {
    const toRest = through([0, 1], [0.5, 1], [0.53, 0.4], [0.545, -0.12], [1, -0.12]);
    expect(findFastMoves(toRest)).toMatchObject([{ direction: 'closing' }]);
    const jump = [
      [0.5, 1],
      [0.51, 0.9],
      [0.511, 0.5],
    ] as const;
    const cracked = through([0, 1], ...jump, [0.52, 0.35], [0.53, 0.1], [0.534, 0], [1, 0]);
    expect(findFastMoves(cracked)).toMatchObject([{ direction: 'closing' }]);
  });

  test.each([
    ['a jump in a closing by hand', through([0, 1], [0.5, 0.7], [0.501, 0.3], [0.6, 0], [1, 0])],
    [
      'a brisk closing by hand over a jump',
      through([0, 1], [0.5, 1], [0.56, 0.8], [0.561, 0.71], [0.62, 0.45], [1, 0.45]),
    ],
    ['a closing by hand', through([0, 1], [0.5, 1], [1, 0], [1.5, 0])],
    ['a contact that opens', through([0, 1], [0.5, 1], [0.502, 0], [1, 0])],
    [
      'a signal that comes back up',
      through([0, 1], [0.5, 1], [0.52, 0], [0.53, 0], [0.54, 1], [1, 1]),
    ],
    [
      'a lead that discharges to its rest level',
      through([0, 1], [0.5, 1], [0.503, 0.3], [0.51, 0], [0.52, -0.12], [1, -0.12]),
    ],
  ])('%s is none', (_, levels) => {
    expect(findFastMoves(levels).filter(({ to }) => to < 0.5)).toEqual([]);
  });

  test('goes on beyond a low of the noise, but not beyond a rebound', () => {
    const touchOf = (levels: Levels) => levels.time[findFastMoves(levels)[0]?.touch ?? 0];
    const fall = through([0, 1], [0.5, 1], [0.54, 0], [1, 0]);
    const mean = fall.mean.slice();
    mean[525] = mean[525]! - 0.08;
    expect(touchOf({ ...fall, visible: 0.13, mean })).toBeCloseTo(0.538, 3);
    const rebound = through([0, 1], [0.5, 1], [0.54, 0.03], [0.543, 0.08], [0.549, 0], [1, 0]);
    expect(touchOf(rebound)).toBeCloseTo(0.54, 3);
  });

  test('is found where a gap hides all of it but its damped end', () => {
    const { time, ...levels } = through([0, 1], [0.5, 1], [0.501, 0.05], [0.51, 0], [1, 0]);
    const later = time.map((at) => (at > 0.5 ? at + 0.08 : at));
    const found = findFastMoves({ ...levels, time: later });
    expect(found.map(({ start, to }) => [start, to])).toEqual([[501, expect.closeTo(0, 2)]]);
  });

  test('is found where a gap hides how it came to lie still', () => {
    const { time, ...levels } = through(
      [0, 1],
      [0.5, 1],
      [0.54, 0],
      [0.55, 0.2],
      [0.56, 0],
      [1, 0],
    );
    const later = time.map((at) => (at > 0.55 ? at + 0.6 : at));
    expect(findFastMoves({ ...levels, time: later })).toMatchObject([
      { start: expect.closeTo(500, -1) },
    ]);
  });

  test('there and back sooner than a hand can is none', () => {
    const bump = through([0, 0.4], [0.5, 0.4], [0.53, 0.7], [0.56, 0.4], [1, 0.4]);
    expect(findFastMoves(bump)).toEqual([]);
    const thrown = through([0, 0.4], [0.4, 0.4], [0.52, 0.7], [0.55, 0.4], [1, 0.4]);
    expect(findFastMoves(thrown)).toHaveLength(1);
  });
});
