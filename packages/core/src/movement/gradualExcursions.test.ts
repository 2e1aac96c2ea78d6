import { expect, test } from 'vitest';
import { gradualExcursions } from './gradualExcursions.js';
import { plainLevels } from './plainLevels.js';

const time = Float64Array.from({ length: 2001 }, (_, i) => i / 1000);
const slow = new Uint8Array(time.length);

function found(level: (at: number) => number, fast: Uint8Array = slow) {
  const mean = time.map(level);
  return gradualExcursions(plainLevels(time, mean), mean, fast);
}

/** A half wave of a depth that lasts some seconds, on an opening at 0.4 spans per second. */
const bump = (depth: number, seconds: number) => (at: number) => {
  const along = (at - 1) / seconds;
  return 0.1 + 0.4 * at - (along > 0 && along < 1 ? depth * Math.sin(Math.PI * along) : 0);
};

test.each([0.035, 0.05, 0.07, 0.1])(
  'a deep bump of %f s lies off the path from end to end',
  (seconds) => {
    const [one, ...others] = found(bump(0.12, seconds));
    expect(others).toEqual([]);
    expect(Math.abs(time[one!.from]! - 1)).toBeLessThan(0.1 * seconds);
    expect(Math.abs(time[one!.to]! - 1 - seconds)).toBeLessThan(0.1 * seconds);
  },
);

test('what a hand can do is none: a shallow bump, a slow one, starts, stops and turns', () => {
  expect(found(bump(0.014, 0.05))).toEqual([]);
  expect(found(bump(0.06, 0.12))).toEqual([]);
  const turns = (at: number) => 0.5 + 0.4 * Math.cos(2 * Math.PI * 2 * at);
  expect(found(turns)).toEqual([]);
  const startsAndStops = (at: number) => Math.min(0.9, Math.max(0.1, 3 * (at - 1)));
  expect(found(startsAndStops)).toEqual([]);
});

test('fast moves are left out', () => {
  expect(found(bump(0.12, 0.05), new Uint8Array(time.length).fill(1))).toEqual([]);
});
