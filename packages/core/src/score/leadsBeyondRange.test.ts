import { expect, test } from 'vitest';
import { leadsBeyondRange } from './leadsBeyondRange.js';

/** A throttle that was held beyond a recorder's range fell to closed within one bin. */
const mean = Float64Array.of(0.7, 0.7, 0.7, 0.01, 0, 0);
const step = { kind: 'step', from: 3, to: 3 } as const;
const leads = (low: number, high: number, kind: 'step' | 'dropout' = 'step') =>
  leadsBeyondRange({ ...step, kind }, { mean, visible: 0.02, clip: { low, high } });

test('a step from, or to, where the recorder’s range ends within the travel leads beyond it', () => {
  expect(leads(-Infinity, 0.7)).toBe(true);
  expect(leads(0.01, Infinity)).toBe(true);
});

test('any other does not: within the range, or where it holds the whole travel, nor what is no step', () => {
  expect(leads(-Infinity, 0.9)).toBe(false);
  expect(leads(-0.01, 1.2)).toBe(false);
  expect(leads(-Infinity, 0.7, 'dropout')).toBe(false);
});
