import { expectation, liveSweep, scoreSweep, simulateSweep } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { anyPlan, tolerances } from './sweeps.js';

/** Lengths of chunks, repeated until all is fed: none, single samples and any other. */
const lengths = fc.array(
  fc.oneof(
    fc.constantFrom(0, 1),
    fc.integer({ min: 2, max: 50 }),
    fc.integer({ min: 50, max: 5000 }),
  ),
  { minLength: 1, maxLength: 8 },
);

test('whatever the cutting into chunks, the end is that of the whole sweep', () => {
  fc.assert(
    fc.property(anyPlan, lengths, fc.boolean(), fc.boolean(), (plan, cuts, withSupply, looking) => {
      const expected = expectation(plan.circuit, tolerances);
      const { time, signal } = simulateSweep(plan).sweep;
      const supply = withSupply ? time.map((at) => 5 + 0.01 * Math.sin(at)) : undefined;
      const live = liveSweep(expected);
      for (let at = 0, k = 0; at < time.length; k++) {
        const to = k < 1000 ? at + cuts[k % cuts.length]! : time.length;
        live.feed(time.slice(at, to), signal.slice(at, to), supply?.slice(at, to));
        if (looking && k % 200 === 0) live.provisional();
        at = to;
      }
      expect(live.end()).toEqual(scoreSweep({ time, signal, ...(supply && { supply }) }, expected));
    }),
    { numRuns: 40 * soak },
  );
});
