import { expect, test } from 'vitest';
import { strokesOf } from './strokesOf.js';

const of = (...shaft: number[]) => strokesOf(Float64Array.from(shaft), 2);

test('strokes end at the turning point; small turns are none', () => {
  expect(of(0, 5, 4, 9, 9, 3, 4, 0, 7)).toEqual([
    { from: 0, to: 4, opening: true },
    { from: 4, to: 7, opening: false },
    { from: 7, to: 9, opening: true },
  ]);
});

test('a first stroke that closes, and one that crept before it moved', () => {
  expect(of(9, 1)).toEqual([{ from: 0, to: 2, opening: false }]);
  expect(of(5, 5.5, 4.5, 5, 8, 10)).toEqual([{ from: 0, to: 6, opening: true }]);
});

test('who never moved far made no stroke', () => {
  expect(of(1, 2, 1, 3, 2)).toEqual([]);
});
