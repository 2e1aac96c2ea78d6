import { type Circuit, isDetermined, operatingPoint } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { worstCase } from '../../packages/core/src/ratings/worstCase.js';
import { soak } from '../counts.js';
import { hookUp, position } from './circuits.js';

const size = (value: unknown): number => (typeof value === 'number' ? Math.abs(value) : 0);

test('no wiper position is worse than the worst, in any hook-up', () => {
  fc.assert(
    fc.property(
      hookUp,
      fc.array(position, { minLength: 5, maxLength: 20 }),
      (at: Circuit, places) => {
        const worst = worstCase(at);
        for (const x of places) {
          const { parts } = operatingPoint(at, x);
          const wiper = size(parts.contact?.amps);
          // A piece without length away from the wiper has no heat; one next to it is the limit of a short piece.
          const pieces = Object.entries(parts).filter(
            ([name, part]) =>
              /^track(Above|Below)/.test(name) && !(/\d/.test(name) && part?.watts === 0),
          );
          const largest = Math.max(0, ...pieces.map(([, part]) => size(part?.amps)));
          const track = largest ** 2 * at.sensor.track;
          // Where nothing flows, what is left is the rounding of currents that cancel.
          const rounding =
            Number.EPSILON * Math.max(0, ...Object.values(parts).map((part) => size(part?.amps)));
          const checks = [
            [worst.wiper.value, wiper, rounding],
            [worst.source.value, size(parts.source?.amps), rounding],
            [worst.limiter.value, size(parts.limiter?.watts), rounding ** 2 * at.limiter],
            [worst.track.value, track, rounding ** 2 * at.sensor.track],
          ] as const;
          for (const [most, here, none] of checks) {
            if (isDetermined(most) && Number.isFinite(here))
              expect(here).toBeLessThanOrEqual(most * (1 + 1e-9) + none);
          }
        }
      },
    ),
    { numRuns: 1500 * soak },
  );
}, 240_000);
