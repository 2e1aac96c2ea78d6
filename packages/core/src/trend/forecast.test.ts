import { expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { fitTrend } from './fitTrend.js';
import { forecast, forecastEnd, whenLimitIsMet } from './forecast.js';

const rising = fitTrend([0, 1.02, 1.97, 3.01, 4].map((value, at) => ({ at, value })))!;

test('goes on along the line, in a band that widens, and as far again as the record is long', () => {
  expect(forecastEnd(rising)).toBe(8);
  const [near, far] = [forecast(rising, 4)!, forecast(rising, 8)!];
  expect(far.value).toBeCloseTo(8, 1);
  expect(far.high - far.low).toBeGreaterThan(near.high - near.low);
  expect(() => forecast(rising, 8.1)).toThrow(expect.objectContaining({ path: 'at' }));
  expect(() => forecast(rising, -1)).toThrow(expect.objectContaining({ path: 'at' }));
});

test('where no change is told nothing is forecast', () => {
  const still = fitTrend([1, 1.1, 0.9, 1].map((value, at) => ({ at, value })))!;
  expect(forecast(still, 5)).toBeUndefined();
  expect(whenLimitIsMet(still, 1.2)).toBeUndefined();
});

test('the next value lies in the band as often as it says', () => {
  const random = randomNumbers(9);
  let [inside, runs] = [0, 0];
  while (runs < 2000) {
    const values = Array.from({ length: 6 }, (_, at) => ({ at, value: 10 * at + random.normal() }));
    const trend = fitTrend(values)!;
    if (!trend.changed) continue;
    const { low, high } = forecast(trend, 8)!;
    const next = 80 + random.normal();
    if (low <= next && next <= high) inside++;
    runs++;
  }
  // 95 % of 2,000 is 1,900 with a standard deviation of 10.
  expect(inside).toBeGreaterThan(1860);
  expect(inside).toBeLessThan(1940);
});

test('a limit is met first by the band’s edge, then by the line, then by the other edge', () => {
  const { soonest, line, latest } = whenLimitIsMet(rising, 6)!;
  expect(forecast(rising, soonest!)!.high).toBeCloseTo(6, 9);
  expect(line).toBeCloseTo(6, 1);
  expect(forecast(rising, latest!)!.low).toBeCloseTo(6, 9);
  expect(soonest!).toBeLessThan(line!);
  expect(line!).toBeLessThan(latest!);
});

test('a limit that lies too far, behind, or is met already', () => {
  expect(whenLimitIsMet(rising, 100)).toEqual({});
  expect(whenLimitIsMet(rising, -1)).toBeUndefined();
  expect(whenLimitIsMet(rising, 3)).toMatchObject({ line: 4 });
  const falling = fitTrend([0, -1.02, -1.97, -3.01, -4].map((value, at) => ({ at, value })))!;
  expect(whenLimitIsMet(falling, -6)!.line).toBeCloseTo(6, 1);
});
