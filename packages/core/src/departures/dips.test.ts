import { describe, expect, test } from 'vitest';
import type { Levels } from '../movement/levels.js';
import { findDips } from './dips.js';

const interval = 1e-3;
const [closed, open] = [0, 1];

/** Eight strokes of a second each between the stops, with dirt of 20 ms at half way on some of them. */
function strokes(dirty: (stroke: number) => boolean): Float64Array {
  return Float64Array.from({ length: 8000 }, (_, i) => {
    const [stroke, part] = [Math.floor(i / 1000), (i % 1000) / 1000];
    const level = stroke % 2 === 0 ? part : 1 - part;
    const near = (part - 0.5) / 0.01;
    return dirty(stroke) && Math.abs(near) < 1 ? level - 0.06 * (1 - near ** 2) ** 2 : level;
  });
}

function dipsOf(mean: Float64Array) {
  const time = Float64Array.from(mean, (_, i) => i * interval);
  const levels = { time, mean, interval, visible: 0.02, noise: 1e-4, rest: -0.2 } as const;
  return findDips(levels as unknown as Levels, mean, { closed, open }, new Uint8Array(mean.length));
}

describe('findDips', () => {
  test('finds dirt that a wiper passes over without an edge, on each pass', () => {
    const found = dipsOf(strokes(() => true));
    expect(found).toHaveLength(8);
    for (const { level } of found) expect(level).toBeCloseTo(0.5, 1);
  });

  test('takes what most passes over the place do not show for the hand', () => {
    expect(dipsOf(strokes((stroke) => stroke < 3))).toHaveLength(0);
    expect(dipsOf(strokes((stroke) => stroke < 5))).toHaveLength(5);
  });

  test('finds nothing where nothing pulls a lifted wiper that way', () => {
    const upward = strokes(() => true).map((level) => 1 - level);
    expect(dipsOf(upward)).toHaveLength(0);
  });

  test('takes no hand that turns round quickly at one level for dirt, however noisy it is', () => {
    const turns = Float64Array.from(
      { length: 8000 },
      (_, i) => 0.1 + Math.abs(((i % 500) - 250) / 250) * 0.8,
    );
    const time = Float64Array.from(turns, (_, i) => i * interval);
    const levels = { time, mean: turns, interval, visible: 0.01, noise: 8e-3, rest: -0.2 } as const;
    const found = findDips(
      levels as unknown as Levels,
      turns,
      { closed: -1, open: 2 },
      new Uint8Array(8000),
    );
    expect(found).toEqual([]);
  });
});
