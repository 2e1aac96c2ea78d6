import { expectation, InputError, type Score, scoreSweep } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';

const expected = expectation(
  {
    source: { volts: 5 },
    limiter: 1000,
    sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  },
  { source: 0.01, track: 0.2, closedPosition: 0.02, openPosition: 0.03 },
);

const value = fc.oneof(
  { weight: 12, arbitrary: fc.double({ min: -1, max: 6, noNaN: true }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(0, 5, 1e-300, 1e300, -1e300, Number.NaN, Number.POSITIVE_INFINITY),
  },
);

/** Anything but a sweep: noise, constants, sawteeth, repeated and reversed stamps, extreme values. */
const notASweep = fc
  .record({
    signal: fc.oneof(
      fc.array(value, { minLength: 0, maxLength: 400 }),
      fc
        .tuple(value, fc.integer({ min: 1, max: 400 }))
        .map(([one, count]) => new Array<number>(count).fill(one)),
      fc
        .tuple(fc.integer({ min: 2, max: 40 }), fc.integer({ min: 50, max: 400 }))
        .map(([period, count]) =>
          Array.from({ length: count }, (_, i) => (4 * (i % period)) / period),
        ),
    ),
    interval: fc.constantFrom(1e-6, 1e-3, 0.01, 1, 1e9),
    stamps: fc.constantFrom('even', 'repeated', 'reversed', 'equal'),
  })
  .map(({ signal, interval, stamps }) => {
    const at = (i: number): number => {
      if (stamps === 'equal') return 0;
      if (stamps === 'reversed') return (signal.length - i) * interval;
      return (stamps === 'repeated' ? Math.floor(i / 3) : i) * interval;
    };
    return { time: Float64Array.from(signal, (_, i) => at(i)), signal: Float64Array.from(signal) };
  });

function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

test('what is no sweep is refused or judged, never passed, and no NaN leaves', () => {
  fc.assert(
    fc.property(notASweep, (sweep) => {
      let score: Score;
      try {
        score = scoreSweep(sweep, expected);
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        return;
      }
      expect(score.verdict).not.toBe('pass');
      expect(numbersOf(score).every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 2000 * soak },
  );
});
