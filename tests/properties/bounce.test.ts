import { switchBounce } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';

/** A change as it is made: how long it is quiet before, and the pieces between its leaps; all in samples. */
const change = fc.record({
  quiet: fc.integer({ min: 60, max: 200 }),
  pieces: fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 7 }),
});

test('every change of a switch that bounces is found as it was made', () => {
  fc.assert(
    fc.property(
      fc.array(change, { minLength: 1, maxLength: 6 }),
      fc.boolean(),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      (made, beginsHigh, between) => {
        const levels = { low: 1, high: 4, apart: 0.05 };
        const volts: number[] = [];
        const expected: unknown[] = [];
        let isHigh = beginsHigh;
        const hold = (samples: number) => {
          // After each leap a sample may stand between the levels: it belongs to what was.
          for (let i = 0; i < samples; i++)
            volts.push(i > 0 && i % 7 === 3 ? 1 + 3 * between : isHigh ? 5 : 0);
        };
        for (const { quiet, pieces } of made) {
          hold(quiet);
          const [from, begins] = [isHigh, volts.length];
          isHigh = !isHigh;
          for (const piece of pieces) {
            hold(piece);
            isHigh = !isHigh;
          }
          const leaps = pieces.length + 1;
          const bounced = pieces.reduce((sum, piece) => sum + piece, 0);
          expected.push({
            time: begins / 1000,
            from: from ? 'high' : 'low',
            to: isHigh ? 'high' : 'low',
            bounced: expect.closeTo(bounced / 1000, 9),
            returns: Math.floor(leaps / 2),
            resolution: expect.closeTo(0.001, 9),
          });
        }
        hold(60);
        const times = volts.map((_, i) => i / 1000);
        expect(switchBounce(times, volts, levels)).toEqual({
          begins: beginsHigh ? 'high' : 'low',
          changes: expected,
        });
      },
    ),
    { numRuns: 500 * soak },
  );
});
