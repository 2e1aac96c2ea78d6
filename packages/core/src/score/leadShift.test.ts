import { expect, test } from 'vitest';
import type { Departure } from '../departures/departure.js';
import { expectation } from '../expectation/expectation.js';
import { plainLevels } from '../movement/plainLevels.js';
import { throttleScale } from '../movement/throttleScale.js';
import { leadShift } from './leadShift.js';

const circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit);
const scale = throttleScale(expected);
const time = Float64Array.from({ length: 1000 }, (_, i) => i / 100);

/** What is told of a step at half travel by rests at the stops before and after it, shifted as told. */
function told(shift: (level: number) => number, stops: readonly number[] = [0, 1]): number {
  const mean = time.map((at) => 0.5 + (at > 5 ? shift(0.5) : 0));
  const step: Departure = { kind: 'step', from: 500, to: 501, depth: shift(0.5) };
  const rests = stops.flatMap((stop) => [
    { start: 1 + stop, end: 1.5 + stop, level: stop },
    { start: 7 + stop, end: 7.5 + stop, level: stop + shift(stop) },
  ]);
  return leadShift(step, [step], rests, plainLevels(time, mean), expected, scale);
}

test('readings that all move toward the supply, the lowest ones most, are a ground lead’s that came to resist', () => {
  const toSupply = (level: number): number => 0.2 * (1.125 - level);
  expect(told(toSupply)).toBeGreaterThan(4);
  expect(told(toSupply, [0])).toBeGreaterThan(4);
  expect(told((level) => -0.2 * (level + 0.125))).toBeGreaterThan(4);
});

test('readings that all move alike are no lead’s, nor are those that stay, nor a stop’s at the track’s end', () => {
  expect(told(() => 0.06)).toBeLessThan(-4);
  expect(told((level) => (level === 0.5 ? 0.1 : 0))).toBeLessThan(-4);
  expect(told((level) => (level === 0 ? -0.12 : -0.2), [0])).toBeLessThan(0);
});

test('nothing is told where no stop was read both before and after', () => {
  expect(told(() => 0.1, [])).toBe(0);
});
