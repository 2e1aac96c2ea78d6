import { expect, test } from 'vitest';
import { stopsOf } from './stopsOf.js';

const whole = { clip: { low: -Infinity, high: Infinity }, noise: 0.001 };
const at = (...levels: readonly number[]) => levels.map((level) => ({ level }));

test('the outermost rests are at the stops, others between them', () => {
  const { closed, open } = stopsOf(at(0.01, 0.03, 0.15, 0.6, 0.8, 0.98), whole);
  expect(closed).toBeCloseTo(0.02, 12);
  expect(open).toBeCloseTo(0.98, 12);
});

test('without rests near to where a stop is expected it is taken to be there', () => {
  expect(stopsOf(at(0.5), whole)).toEqual({ closed: 0, open: 1 });
});

test('a rest at the end of the recorder’s range is no stop', () => {
  const clipped = { ...whole, clip: { low: -Infinity, high: 0.9 } };
  expect(stopsOf(at(0.02, 0.9), clipped)).toEqual({ closed: 0.02, open: 1 });
  expect(stopsOf(at(0.02, 0.895), clipped)).toEqual({ closed: 0.02, open: 0.895 });
});
