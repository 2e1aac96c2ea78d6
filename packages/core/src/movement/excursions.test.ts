import { expect, test } from 'vitest';
import { findExcursions } from './excursions.js';
import { plainLevels } from './plainLevels.js';

const time = Float64Array.from({ length: 100 }, (_, i) => i / 1000);
const path = time.map(() => 0.5);
const excursionsOf = (depth: number) => {
  const mean = path.map((level, i) => (i === 50 ? level + depth : level));
  return findExcursions(plainLevels(time, mean), path);
};

test('what goes clearly beyond the visible departure is an excursion, what rounding could have made of less is none', () => {
  const { visible } = plainLevels(time, path);
  expect(excursionsOf(1.1 * visible)).toMatchObject([{ from: 50, to: 50, below: 0 }]);
  // Seven tenths of three steps and one more step by rounding.
  expect(excursionsOf((0.7 + 1 / 3) * visible)).toEqual([]);
  // Fourteen tenths of three steps and one step less.
  expect(excursionsOf(-(1.4 - 1 / 3) * visible)).toHaveLength(1);
});
