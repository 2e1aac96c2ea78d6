import { expect, test } from 'vitest';
import { defaultCriteria } from '../criteria.js';
import { expectation } from '../expectation/expectation.js';
import { throttleScale } from '../movement/throttleScale.js';
import { judgeMovement } from './judgeMovement.js';

const expected = expectation({
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
});

/** Whole strokes both ways of a throttle that went to these levels in turn. */
function pairs(...levels: readonly number[]) {
  const strokes = levels.slice(1).map((to, i) => {
    const from = levels[i]!;
    return {
      direction: to > from ? 'opening' : 'closing',
      start: i,
      end: i + 1,
      from,
      to,
    } as const;
  });
  const path = Float64Array.from(levels);
  const scale = throttleScale(expected);
  return judgeMovement(path, strokes, expected, scale, 0, true, defaultCriteria)[1]!.measured;
}

test('counts the strokes that led all the way, either way', () => {
  expect(pairs(0, 1, 0, 1, 0.05)).toBe(2);
  expect(pairs(0, 1, 0, 1)).toBe(1);
  expect(pairs(0, 1)).toBe(0);
});

test('a hand that turned back for a moment opened it all the same', () => {
  expect(pairs(1, 0, 0.66, 0.55, 1)).toBe(1);
  expect(pairs(0.6, 1, 0, 0.87, 0.2, 1)).toBe(1);
});

test('strokes that leave a part between them are none together', () => {
  expect(pairs(1, 0, 0.4, 0.6, 0.5, 1, 0.5)).toBe(0);
  expect(pairs(0.2, 0.7, 0.2, 1)).toBe(0);
});
