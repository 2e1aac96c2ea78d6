import { expect, test } from 'vitest';
import { columnSentence, movementSentence } from './recordingSentences.js';

test('a column with and without a heading', () => {
  const column = { number: 2, name: 'wiper', unit: 'V', unitFrom: 'assumed' };
  expect(columnSentence(column)).toBe('column 2 “wiper” in V (assumed)');
  expect(columnSentence({ ...column, name: '' })).toBe('column 2 in V (assumed)');
});

test('movement, with and without the spring', () => {
  expect(movementSentence({ openings: 1, closings: 2, snaps: 0, rebounds: 0 })).toBe(
    '1 opening and 2 closings.',
  );
  expect(movementSentence({ openings: 2, closings: 2, snaps: 1, rebounds: 1 })).toContain(
    '1 of them by the spring with 1 rebound',
  );
  expect(movementSentence({ openings: 2, closings: 2, snaps: 1, rebounds: 0 })).toBe(
    '2 openings and 2 closings, 1 of them by the spring.',
  );
});
