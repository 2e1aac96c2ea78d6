import { expect, test } from 'vitest';
import { liveColumns } from './liveColumns.js';

test('keeps the extremes of each hundredth of a second, and hands the last one out again', () => {
  const columns = liveColumns();
  columns.add(Float64Array.of(0.001, 0.005, 0.009, 0.031), Float64Array.of(1, 3, 2, 5));
  expect(columns.take()).toEqual({
    first: 0,
    low: Float32Array.of(1, Number.NaN, Number.NaN, 5),
    high: Float32Array.of(3, Number.NaN, Number.NaN, 5),
  });
  columns.add(Float64Array.of(0.035, 0.041), Float64Array.of(4, 6));
  expect(columns.take()).toEqual({
    first: 3,
    low: Float32Array.of(4, 6),
    high: Float32Array.of(5, 6),
  });
});

test('after a long pause it goes on without columns between', () => {
  const columns = liveColumns();
  columns.add(Float64Array.of(0, 600), Float64Array.of(1, 2));
  expect(columns.take()).toEqual({
    first: 60_000,
    low: Float32Array.of(2),
    high: Float32Array.of(2),
  });
});
