import { expect, test } from 'vitest';
import { mendedStamps } from './mendedStamps.js';

const even = Float64Array.from({ length: 400 }, (_, i) => i / 100);
const signal = even.map((at) => Math.sin(at));

test('leaves what runs forward as it is', () => {
  expect(mendedStamps(even, signal)).toEqual({ time: even, strayed: 0, restarts: 0 });
});

test('takes a single stamp that strays to lie between its neighbours', () => {
  const stray = even.slice();
  stray[200] = 1.5;
  const { time, strayed } = mendedStamps(stray, signal);
  expect(strayed).toBe(1);
  expect(time[200]).toBeCloseTo(2, 9);
});

test('goes on where a counter began anew while the signal went on', () => {
  const wrapped = even.map((at) => at % 2.5);
  const { time, restarts } = mendedStamps(wrapped, signal);
  expect(restarts).toBe(1);
  expect(time[399]).toBeCloseTo(even[399]!, 9);
});

test('leaves two recordings in one alone', () => {
  const anew = even.map((at) => at % 2.5);
  const jumps = even.map((_, i) => (i < 250 ? i : 0));
  expect(mendedStamps(anew, jumps)).toMatchObject({ restarts: 0, strayed: 0 });
});

test('goes on where a counter began anew that gives its stamp to two rows', () => {
  const pairs = even.map((_, i) => (Math.floor(i / 2) / 50) % 2.5);
  const { time, restarts } = mendedStamps(pairs, signal);
  expect(restarts).toBe(1);
  expect(time[399]).toBeCloseTo(even[398]!, 1);
});
