import { expect, test } from 'vitest';
import { columnSentence, movementSentence, smoothedSentence } from './recordingSentences.js';

test('a column with and without a heading, and where its unit is none', () => {
  const column = { number: 2, name: 'wiper', chosenFrom: 'place', unit: 'V' } as const;
  expect(columnSentence({ ...column, unitFrom: 'assumed' })).toBe(
    'column 2 “wiper” (the first that can be it) in V (assumed)',
  );
  expect(columnSentence({ ...column, name: '', chosenFrom: 'option', unitFrom: 'option' })).toBe(
    'column 2 in V (as told)',
  );
  expect(columnSentence({ number: 3, name: 'shaft', chosenFrom: 'option' })).toBe(
    'column 3 “shaft” (as told)',
  );
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

test('samples that were smoothed are said to hang together, with how long', () => {
  expect(smoothedSentence('16 ms')).toContain('smoothed over 16 ms or more');
});
