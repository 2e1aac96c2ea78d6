import { expect, test } from 'vitest';
import { linearScale } from './linearScale.js';

test('the ends of the domain lie at the ends of the range, whichever way that runs', () => {
  const scale = linearScale([-1, 4], [300, 100]);
  expect([-1, 4, 1.5].map(scale)).toEqual([300, 100, 200]);
});

test('what is beyond lies on the same line', () => {
  const scale = linearScale([0, 1], [40, 140]);
  expect([-0.5, 2].map(scale)).toEqual([-10, 240]);
});
