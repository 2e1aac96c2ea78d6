import { expect, test } from 'vitest';
import { type AdcConvention, adcCount, adcRatio } from './adcCount.js';

test.each([
  [0, 10, 'steps', 0],
  [0.5, 10, 'steps', 512],
  [0.5, 10, 'full-scale', 512],
  [0.25, 8, 'full-scale', 64],
  [0.25, 8, 'steps', 64],
  [0.0999, 12, 'steps', 409],
  [1, 12, 'steps', 4095],
  [1, 12, 'full-scale', 4095],
  [1.4, 12, 'steps', 4095],
  [-0.4, 12, 'full-scale', 0],
  [1, 32, 'steps', 4294967295],
] as const)('%d of the reference at %d bits, %s: %d', (ratio, bits, convention, count) => {
  expect(adcCount(ratio, bits, convention).count).toBe(count);
});

test('every count comes back as itself, and the ratios it stands for hold the ratio', () => {
  for (const convention of ['steps', 'full-scale'] as const) {
    for (let i = 0; i <= 1000; i++) {
      const { count, low, high } = adcCount(i / 1000, 7, convention);
      expect(low).toBeLessThanOrEqual(i / 1000);
      expect(high).toBeGreaterThanOrEqual(i / 1000);
      expect(adcCount(adcRatio(count, 7, convention).ratio, 7, convention).count).toBe(count);
    }
  }
});

test.each([
  [() => adcCount(Number.NaN, 10, 'steps'), 'not-finite', 'ratio'],
  [() => adcCount(0.5, 0, 'steps'), 'out-of-range', 'bits'],
  [() => adcCount(0.5, 10.5, 'steps'), 'not-whole', 'bits'],
  [() => adcCount(0.5, 10, '2^N' as AdcConvention), 'unknown-choice', 'convention'],
  [() => adcRatio(1024, 10, 'steps'), 'out-of-range', 'count'],
  [() => adcRatio(0.5, 10, 'steps'), 'not-whole', 'count'],
])('refuses (%#) by code and path', (call, code, path) => {
  expect(call).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
});
