import { expect, test } from 'vitest';
import { chainsOf } from './chainsOf.js';

test('each item of a chain lies within the gap of the one before, however long the chain', () => {
  const chains = chainsOf([0.5, 0.1, 0.03, 0.07, 0.52], (level) => level, 0.05);
  expect(chains).toEqual([
    [0.03, 0.07, 0.1],
    [0.5, 0.52],
  ]);
  expect(chainsOf([], (level: number) => level, 0.05)).toEqual([]);
});
