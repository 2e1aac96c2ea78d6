import { exerciseTopics } from '@truesweep/explain';
import { expect, test } from 'vitest';
import { readSheetAddress, sheetSearch, sheetTopics } from './sheetAddress.js';

test('an address names its sheet, and the sheet its address', () => {
  const search = '?seed=7&level=medium&topics=loading,trace';
  const { choice, refused } = readSheetAddress(search);
  expect(choice).toEqual({ seed: 7, level: 'medium', topics: ['loading', 'trace'] });
  expect(sheetSearch(choice)).toBe(search);
  expect(refused).toEqual([]);
});

test('an empty address names sheet 1, easy, of all topics but the drawn sweeps', () => {
  const { choice, refused } = readSheetAddress('');
  expect(choice).toMatchObject({ seed: 1, level: 'easy' });
  expect(choice.topics).toEqual(exerciseTopics.filter((topic) => topic !== 'trace'));
  expect(sheetTopics).toEqual(exerciseTopics);
  expect(refused).toEqual([]);
});

test.each([
  ['?seed=0', 'The number of the sheet is “0”'],
  ['?seed=1.5', 'The number of the sheet is “1.5”'],
  ['?seed=1000000', 'a whole number from 1 to 999999'],
  ['?seed=', 'The number of the sheet is “”'],
  ['?level=none', '“none” is no level'],
  ['?topics=soup,loading', '“soup” is no topic'],
  ['?topics=', 'No topic is chosen'],
])('%s is told, and what can be read stands', (search, said) => {
  const { choice, refused } = readSheetAddress(search);
  expect(refused.join(' ')).toContain(said);
  expect(refused).toHaveLength(1);
  expect(choice).toMatchObject({ seed: 1, level: 'easy' });
  expect(choice.topics.length).toBeGreaterThan(0);
});
