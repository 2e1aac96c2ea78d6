import { expect, test } from 'vitest';
import {
  absoluteThrottlePercent,
  type OutputSense,
  relativeThrottlePercent,
  throttlePercentRatio,
} from './throttlePercent.js';

test('a falling output is complemented', () => {
  expect(absoluteThrottlePercent(0.92, 'falling')).toEqual(absoluteThrottlePercent(0.08));
  expect(relativeThrottlePercent(0.7, 0.9, 'falling').count).toBe(51);
});

test('clips at both ends and keeps one count of doubt', () => {
  expect(absoluteThrottlePercent(-0.1)).toEqual({ count: 0, percent: 0, low: 0, high: 100 / 255 });
  expect(absoluteThrottlePercent(1.2)).toEqual({
    count: 255,
    percent: 100,
    low: 25400 / 255,
    high: 100,
  });
  expect(relativeThrottlePercent(0.1, 0.12).percent).toBe(0);
});

test('every count comes back as itself, its ratio within one count', () => {
  for (const sense of ['rising', 'falling'] as const) {
    for (let count = 0; count <= 255; count++) {
      const back = throttlePercentRatio((count * 100) / 255, sense);
      expect(back.count).toBe(count);
      expect(absoluteThrottlePercent(back.ratio, sense).count).toBe(count);
      expect(back.low).toBeLessThanOrEqual(back.ratio);
      expect(back.high).toBeGreaterThanOrEqual(back.ratio);
    }
  }
});

test.each([
  [() => absoluteThrottlePercent(Number.NaN), 'ratio'],
  [() => absoluteThrottlePercent(0.5, 'up' as OutputSense), 'sense'],
  [() => relativeThrottlePercent(Number.POSITIVE_INFINITY, 0.1), 'ratio'],
  [() => relativeThrottlePercent(0.5, 1.1), 'learnedClosed'],
  [() => throttlePercentRatio(101), 'percent'],
  [() => throttlePercentRatio(-1), 'percent'],
])('refuses (%#) by path', (call, path) => {
  expect(call).toThrow(expect.objectContaining({ name: 'InputError', path }));
});
