import { expect, test } from 'vitest';
import { type PreferredSeries, preferredValues } from './preferredValues.js';

test('each coarser series up to E24, and from E48 to E192, is every second of the next finer', () => {
  for (const [coarse, fine] of [
    ['E3', 'E6'],
    ['E6', 'E12'],
    ['E12', 'E24'],
    ['E48', 'E96'],
    ['E96', 'E192'],
  ] as const) {
    expect(preferredValues(coarse)).toEqual(preferredValues(fine).filter((_, i) => i % 2 === 0));
  }
});

test('the single exception to the formula', () => {
  expect(preferredValues('E192')).toContain(920);
  expect(preferredValues('E192')).not.toContain(919);
});

test.each(['E5', 'e24', '', 'toString'])('refuses the series "%s"', (series) => {
  expect(() => preferredValues(series as PreferredSeries)).toThrow(
    expect.objectContaining({ name: 'InputError', code: 'unknown-choice', path: 'series' }),
  );
});
