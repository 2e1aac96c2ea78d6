import { expect, test } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import { onScale, throttleScale, travelAt } from './throttleScale.js';

const falling = expectation({
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.9, openPosition: 0.1 },
  load: { pullDown: 20e3 },
});

test('closed is 0 and open is 1, for a falling sensor too', () => {
  const scale = throttleScale(falling);
  expect(scale.span).toBeLessThan(0);
  expect(onScale(scale, falling.windows.closed.nominal)).toBe(0);
  expect(onScale(scale, falling.windows.open.nominal)).toBeCloseTo(1, 12);
  expect(scale.rest).toBeGreaterThan(1);
});

test('travel is read back from the bent curve and held at the stops', () => {
  const { travel, volts } = falling.curve;
  for (const i of [0, 1, 37, 99, 100])
    expect(travelAt(falling, volts[i]!)).toBeCloseTo(travel[i]!, 12);
  expect(travelAt(falling, 99)).toBe(0);
  expect(travelAt(falling, -1)).toBe(1);
});
