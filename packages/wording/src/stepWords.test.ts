import { expect, test } from 'vitest';
import { stepWords } from './stepWords.js';

test('a drift that is not known is not told as none', () => {
  const step = { start: 0, end: 3, volts: 2, uncertainty: 0.001 };
  expect(stepWords.held(step)).toMatch(/at 2\.00 V; too few samples/);
  expect(stepWords.held({ ...step, drift: 0.002 })).toMatch(/drifting by 2\.00 mV in a second\.$/);
});

test('a leak says that air just pumped looks like one; noise without one says no more than that', () => {
  expect(stepWords.leaks(585)).toMatch(/warms up again and looks like a leak: wait before timing/);
  expect(stepWords.leaks(Number.POSITIVE_INFINITY)).not.toMatch(/held/);
});
