import { expect, test } from 'vitest';
import { isReliable, printReliability, reliability } from './reliability.js';
import type { Told } from './toldOdds.js';

/** So many told with the same odds, of which so many were so. */
const told = (odds: number, so: number, of: number): readonly Told[] =>
  Array.from({ length: of }, (_, i) => ({ odds, isSo: i < so }));

test('odds are counted by bands', () => {
  const bands = reliability([...told(0.93, 46, 50), ...told(0.55, 1, 2), ...told(0.95, 1, 1)]);
  expect(bands.map(({ from, to, so }) => [from, to, so.hits, so.of])).toEqual([
    [0.5, 0.6, 1, 2],
    [0.9, 0.95, 46, 50],
    [0.95, 1, 1, 1],
  ]);
  expect(bands[1]!.told).toBeCloseTo(0.93, 12);
});

test('odds that are too high or too low are found', () => {
  const isSo = (so: number, of: number): boolean => isReliable(reliability(told(0.93, so, of))[0]!);
  expect(isSo(93, 100)).toBe(true);
  expect(isSo(80, 100)).toBe(false);
  expect(isReliable(reliability(told(0.7, 90, 100))[0]!)).toBe(false);
  expect(printReliability('odds', reliability(told(0.93, 80, 100)))).toMatch(/^✗ told 90\.0 %/m);
});

test('few cases prove little', () => {
  expect(isReliable(reliability(told(0.93, 2, 3))[0]!)).toBe(true);
});
