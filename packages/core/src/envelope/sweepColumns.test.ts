import { expect, test } from 'vitest';
import { sweepColumns } from './sweepColumns.js';

test('a sweep whose stamps are all one is one column wide', () => {
  const still = { time: Float64Array.of(3, 3), signal: Float64Array.of(1, 2) };
  expect(sweepColumns(still, 10)).toEqual({
    start: 3,
    end: 3 + 1e-6,
    column: Uint32Array.of(0),
    low: Float64Array.of(1),
    high: Float64Array.of(2),
  });
});
