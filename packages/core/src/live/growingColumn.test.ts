import { expect, test } from 'vitest';
import { growingColumn } from './growingColumn.js';

test('a growing column holds what was appended, in order, however it grows', () => {
  const column = growingColumn();
  const wanted: number[] = [];
  for (const length of [0, 1, 4094, 1, 1, 0, 70_000, 3]) {
    const values = Float64Array.from({ length }, (_, i) => wanted.length + i);
    column.append(values);
    wanted.push(...values);
  }
  expect(Array.from(column.values())).toEqual(wanted);
});

test('a view taken before stays as it was', () => {
  const column = growingColumn();
  column.append(Float64Array.of(1, 2));
  const before = column.values();
  column.append(new Float64Array(70_000).fill(3));
  expect(Array.from(before)).toEqual([1, 2]);
});

test('lets go of the oldest numbers and takes no more room than before', () => {
  const column = growingColumn();
  column.append(Float64Array.of(1, 2, 3, 4));
  const before = column.values();
  column.drop(3);
  expect(Array.from(column.values())).toEqual([4]);
  column.append(Float64Array.of(5));
  expect(Array.from(column.values())).toEqual([4, 5]);
  expect(Array.from(before)).toEqual([1, 2, 3, 4]);
  column.drop(9);
  expect(column.values()).toHaveLength(0);
});

test('reserves no more room ahead than it is told to hold', () => {
  const column = growingColumn(100_000);
  column.append(new Float64Array(5000));
  column.append(new Float64Array(65_000));
  expect(column.values().buffer.byteLength).toBe(8 * 100_000);
  column.append(new Float64Array(70_000).fill(1));
  expect(column.values()).toHaveLength(140_000);
});
