import { expect, test } from 'vitest';
import { fastGuide } from './fastGuide.js';
import type { FastMove } from './fastMoves.js';
import { plainLevels } from './plainLevels.js';

const move: FastMove = {
  direction: 'closing',
  start: 1,
  touch: 3,
  settled: 6,
  from: 1,
  to: 0,
  rebounds: [],
};

/** Levels a millisecond apart, led by one fast move. */
function guided(levels: readonly number[], fastMove: FastMove): number[] {
  const mean = Float64Array.from(levels);
  const time = mean.map((_, i) => i / 1000);
  return [...fastGuide(plainLevels(time, mean), mean.slice(), [fastMove], [6])];
}

test('a fast move goes one way until it touches the stop, then stays below its highest rebound', () => {
  const drawn = guided([1, 1, 0.5, 0, 0.8, 0.2, 0], move);
  expect(drawn).toEqual([1, 1, 0.5, 0, 0.45, 0.2, 0]);
});

test('where little of the fall was seen its rebounds say how high they went', () => {
  const unseen = { ...move, from: 0.07, rebounds: [0.2] };
  const drawn = guided([1, 0.07, 0.03, 0, 0.2, 0.1, 0], unseen);
  expect(drawn).toEqual([1, 0.07, 0.03, 0, 0.2, 0.1, 0]);
});
