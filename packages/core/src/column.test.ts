import { expect, test } from 'vitest';
import { column, timeColumn } from './column.js';

test('what is right comes back', () => {
  const values = Float64Array.of(1, -1e12);
  expect(column(values, 2, 'x')).toBe(values);
  const time = Float64Array.of(0, 0, 1);
  expect(timeColumn(time, 'time')).toBe(time);
  expect(column([1, 2], 2, 'x')).toEqual(Float64Array.of(1, 2));
  expect(column(Float32Array.of(1, 2), undefined, 'x')).toEqual(Float64Array.of(1, 2));
});

test.each([
  [() => column('1, 2', 2, 'x'), 'not-a-list', 'x', /text "1, 2".*Float64Array/],
  [() => column([1, '2'], 2, 'x'), 'not-finite', 'x[1]', /text "2"/],
  [() => column(BigInt64Array.of(1n), 1, 'x'), 'not-finite', 'x[0]', /a bigint/],
  [() => column(new Array(3), 3, 'x'), 'not-finite', 'x[0]', /missing/],
  [() => column(Float64Array.of(1), 2, 'x'), 'length-mismatch', 'x', /holds 1 .* columns: 2/],
  [() => column(new Float64Array(0), 0, 'x'), 'length-mismatch', 'x', /1 or more/],
  [() => column(Float64Array.of(1, Number.NaN), 2, 'x'), 'not-finite', 'x[1]', /NaN/],
  [() => column(Float64Array.of(2e12), 1, 'x'), 'out-of-range', 'x[0]', /10¹²/],
  [() => timeColumn(Float64Array.of(0, 2, 1), 't'), 'time-backwards', 't[2]', /1 s after 2 s/],
  [() => timeColumn(undefined, 't'), 'missing', 't', /missing/],
])('what is wrong (%#) is refused by code, place and sentence', (check, code, path, message) => {
  expect(check).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
  expect(check).toThrow(message);
});
