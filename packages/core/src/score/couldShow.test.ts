import { describe, expect, test } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import type { Movement } from '../movement/followThrottle.js';
import { throttleScale } from '../movement/throttleScale.js';
import { couldShow } from './couldShow.js';

const expected = expectation({
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000 },
  load: { pullDown: 10e6 },
});
const time = Float64Array.from({ length: 2001 }, (_, i) => i / 1000);
/** One opening in two seconds. */
const movement: Movement = {
  path: time.map((at) => at / 2),
  strokes: [{ direction: 'opening', start: 0, end: 2, from: 0, to: 1 }],
  rests: [],
  snaps: [],
  flungOpen: 0,
  stops: { closed: 0, open: 1 },
};
const show = (more: Partial<Movement> = {}) =>
  couldShow(time, { ...movement, ...more }, expected, throttleScale(expected), 0.1, 4e-3);

describe('couldShow', () => {
  test('near the load’s rest level no dropout can show', () => {
    const [[from, to]] = show().blind as [[number, number]];
    expect(from).toBe(0);
    expect(to).toBeCloseTo(0.02, 4);
  });

  test('the narrowest spot is what the slowest pass crosses in the shortest dropout', () => {
    expect(show().narrowestSpot).toBeCloseTo(0.5 * 4e-3, 4);
  });

  test('closings by the spring, or no stroke at all, show no spot', () => {
    const snap = { start: 0.1, touch: 1.9, settled: 2, from: 1, rebounds: [] };
    expect(show({ snaps: [snap] }).narrowestSpot).toBeUndefined();
    expect(show({ strokes: [] }).narrowestSpot).toBeUndefined();
  });
});
