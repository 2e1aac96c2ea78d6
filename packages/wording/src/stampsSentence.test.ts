import type { TakenStamps } from '@truesweep/core';
import { expect, test } from 'vitest';
import { stampsSentence } from './stampsSentence.js';

const asStamped: TakenStamps = { clock: 'stamped', moved: 0, pairs: 0, strayed: 0, restarts: 0 };

const said = (stamps: Partial<TakenStamps>, disordered = 0) =>
  stampsSentence({
    stamps: { ...asStamped, ...stamps },
    disordered,
    interval: 0.001,
  })?.replaceAll('\u00a0', ' ');

test('stamps that were taken as they stand need no word', () => {
  expect(said({})).toBeUndefined();
});

test('another clock is said with how far the samples lie from their stamps', () => {
  expect(said({ clock: 'even', moved: 5.02e-3 })).toBe(
    'Not as stamped: the samples were taken to lie evenly, 1 ms apart, up to 5 ms from their stamps.',
  );
  expect(said({ clock: 'spread', moved: 0.0098 })).toBe(
    'Not as stamped: rows that share a stamp were spread evenly up to the next one, by up to 9.8 ms.',
  );
});

test('what was mended is counted, a sample that strayed is not one written late', () => {
  expect(said({ pairs: 500, strayed: 2, restarts: 1 }, 4)).toBe(
    'Not as stamped: 500 pairs of rows were taken for the lowest and the highest reading of an interval; 2 stamps that strayed alone were put between their neighbours; the clock began anew once and was taken to go on; 1 row written late was put in order.',
  );
  expect(said({ strayed: 1 }, 1)).not.toContain('late');
  expect(said({ restarts: 3 }, 3)).toContain('anew 3 times');
});
