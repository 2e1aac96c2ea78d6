import { describe, expect, test } from 'vitest';
import { plainLevels } from '../movement/plainLevels.js';
import { findStandstills } from './standstills.js';

/** Two seconds at 1 ms, every bin looked at. */
function standstillsOf(level: (at: number) => number) {
  const time = Float64Array.from({ length: 2001 }, (_, i) => i / 1000);
  const mean = time.map(level);
  return findStandstills(plainLevels(time, mean), mean, new Uint8Array(mean.length));
}

const within = (at: number, from: number, to: number) => at >= from && at < to;

describe('findStandstills', () => {
  test('finds where the output stood and caught up with the shaft, at any speed', () => {
    for (const [speed, stood] of [
      [0.4, 0.1],
      [2, 0.02],
      [4, 0.01],
    ] as const) {
      const turn = (at: number) => 0.1 + speed * Math.max(0, at - 0.9);
      const [one, ...others] = standstillsOf((at) =>
        within(at, 1, 1 + stood) ? turn(1) : Math.min(1, turn(at)),
      );
      expect(others).toEqual([]);
      expect(one!.depth).toBeCloseTo(speed * stood, 1);
      expect(Math.abs(one!.from - 1000)).toBeLessThan(15);
    }
  });

  test('a pause of the hand goes on from where it stood', () => {
    const paused = (at: number) => 0.1 + 0.4 * (at < 1 ? at : Math.max(1, at - 0.1));
    expect(standstillsOf(paused)).toEqual([]);
  });

  test('a step alone has no standstill', () => {
    expect(standstillsOf((at) => 0.1 + 0.4 * at + (at < 1 ? 0 : 0.05))).toEqual([]);
  });

  test('steps that come again and again are the track’s own', () => {
    expect(standstillsOf((at) => Math.floor((0.1 + 0.4 * at) / 0.02) * 0.02)).toEqual([]);
  });
});
