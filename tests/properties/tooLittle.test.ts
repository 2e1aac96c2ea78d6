import { scoreSweep } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { shortRecording } from './brokenSweeps.js';

test('what holds no stroke of a hand is never said to be wired wrong', () => {
  fc.assert(
    fc.property(shortRecording, ({ sweep, expected, recorder }) => {
      const { verdict, causes, checks } = scoreSweep(sweep, expected, recorder);
      expect(checks.find(({ check }) => check === 'duration')?.outcome).toBe('cannot-tell');
      expect(verdict).not.toBe('pass');
      if (verdict === 'fail') expect(causes.map(({ cause }) => cause)).not.toContain('wiring');
    }),
    { numRuns: 1500 * soak },
  );
});

test('what lies still in it is inconclusive', () => {
  fc.assert(
    fc.property(shortRecording, fc.constantFrom(0, 0.5, 2.5, 5, 5.5), (one, volts) => {
      const { time } = one.sweep;
      const still = { time, signal: new Float64Array(time.length).fill(volts) };
      expect(scoreSweep(still, one.expected)).toMatchObject({
        verdict: 'inconclusive',
        causes: [{ cause: 'recording', weight: 1 }],
      });
    }),
    { numRuns: 500 * soak },
  );
});
