import { describe, expect, test } from 'vitest';
import { coarseSnaps } from './coarseSnaps.js';
import type { Departure } from './departure.js';
import type { FastMove } from './fastMoves.js';
import type { Levels } from './levels.js';

const step: Departure = { kind: 'step', from: 10, to: 11, depth: -0.8 };
const move: FastMove = {
  direction: 'closing',
  start: 12,
  touch: 13,
  settled: 13,
  from: 0.15,
  to: 0,
  rebounds: [],
};
const levels = (interval: number, gap = 0): Levels => {
  const mean = new Float64Array(20).fill(1);
  const time = Float64Array.from(mean, (_, i) => i * interval + (i > 10 ? gap : 0));
  return { interval, mean, time } as Levels;
};

describe('a step that ends where a snap begins', () => {
  test('is the beginning of the snap where samples are far apart', () => {
    const joined = coarseSnaps([step], [move], levels(0.032));
    expect(joined.departures).toEqual([]);
    expect(joined.fastMoves).toEqual([{ ...move, start: 9, from: 1 }]);
  });

  test('is so in a gap, too, and where a rebound hangs at its top after it', () => {
    const joined = coarseSnaps([step], [{ ...move, start: 16 }], levels(0.001, 0.1));
    expect(joined.departures).toEqual([]);
    expect(joined.fastMoves).toEqual([{ ...move, start: 9, from: 1 }]);
  });

  test.each<[string, Departure, FastMove, number]>([
    ['where samples would show an edge', step, move, 0.001],
    ['where it lies apart', { ...step, to: 9 }, move, 0.032],
    ['the other way', { ...step, depth: 0.8 }, move, 0.032],
    ['that is a dropout', { ...step, kind: 'dropout' }, move, 0.032],
    ['before an opening', step, { ...move, direction: 'opening' }, 0.032],
  ])('stays a departure %s', (_, departure, fastMove, interval) => {
    const kept = coarseSnaps([departure], [fastMove], levels(interval));
    expect(kept).toEqual({ departures: [departure], fastMoves: [fastMove] });
  });
});
