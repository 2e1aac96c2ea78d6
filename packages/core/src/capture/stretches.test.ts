import { describe, expect, test } from 'vitest';
import { stretchesOf } from './stretches.js';

/** A hundred rows at an interval, then a pause, and a hundred more. */
function paused(interval: number, pause: number) {
  return Float64Array.from({ length: 200 }, (_, i) => i * interval + (i < 100 ? 0 : pause));
}

describe('stretchesOf', () => {
  test.each([
    [1e-3, 0.08, 1],
    [1e-3, 0.15, 2],
    [0.2, 1.2, 1],
    [0.2, 2, 2],
  ])('at an interval of %d s a gap of %d s leaves %i', (interval, pause, stretches) => {
    const found = stretchesOf(paused(interval, pause));
    expect(found).toHaveLength(stretches);
    expect(found.at(-1)![1]).toBe(200);
    if (stretches === 2) expect(found[0]).toEqual([0, 100]);
  });
});
