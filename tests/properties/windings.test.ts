import {
  type Conductor,
  coilCurrent,
  judgeWinding,
  resistanceAtTemperature,
  temperatureOfWinding,
} from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const conductor: fc.Arbitrary<Conductor> = fc.oneof(
  fc.constant({ kind: 'copper' as const }),
  fc.constant({ kind: 'aluminium' as const }),
  between(0.1, 1.1).map((conductivity) => ({ kind: 'conductivity' as const, conductivity })),
  between(100, 10_000).map((k) => ({ kind: 'constant' as const, k })),
);
const celsius = between(-60, 300);
const winding = fc.record({ ohms: between(1e-3, 1e6), at: celsius, conductor });
const runs = { numRuns: 5000 * soak };

test('temperature → resistance → temperature, and resistance → temperature → resistance, to 1e-12 over all conductors', () => {
  let worst = 0;
  fc.assert(
    fc.property(winding, celsius, (coil, t) => {
      const ohms = resistanceAtTemperature(coil, t);
      const back = temperatureOfWinding(coil, ohms);
      const again = resistanceAtTemperature(coil, back);
      // A temperature is as sharp as the sum k + t that it is the rest of: 10⁴ at most.
      const k = coil.conductor.kind === 'constant' ? coil.conductor.k : 2600;
      worst = Math.max(worst, Math.abs(back - t) / (k + 300), Math.abs(again / ohms - 1));
    }),
    runs,
  );
  console.log(
    `there and back: ${worst.toExponential(1)} (holds: at most 1e-14, goal: at most 1e-12)`,
  );
  expect(worst).toBeLessThanOrEqual(1e-14);
});

test('warmer is more ohms and less current, whatever it is of', () => {
  fc.assert(
    fc.property(winding, celsius, celsius, (coil, one, other) => {
      const [cold, warm] = [Math.min(one, other), Math.max(one, other)];
      if (warm - cold < 1e-6) return;
      expect(resistanceAtTemperature(coil, warm)).toBeGreaterThan(
        resistanceAtTemperature(coil, cold),
      );
      const amps = (temperature: number) => coilCurrent({ ...coil, volts: 12, temperature }).amps;
      expect(amps(warm)).toBeLessThan(amps(cold));
    }),
    runs,
  );
});

test('a winding is judged alike at every temperature: limits and what is read move together', () => {
  fc.assert(
    fc.property(winding, celsius, between(0.5, 1.5), (coil, temperature, part) => {
      if (Math.abs(Math.abs(part - 1) - 0.1) < 1e-6) return;
      const sensor = { ...coil, low: 0.9 * coil.ohms, high: 1.1 * coil.ohms };
      const { ohms: _, ...limits } = sensor;
      const ohms = resistanceAtTemperature({ ...coil, ohms: coil.ohms * part }, temperature);
      const reading = { ohms, uncertainty: 0, leads: 0, temperature, temperatureUncertainty: 0 };
      const { verdict } = judgeWinding(limits, [reading]);
      expect(verdict).toBe(Math.abs(part - 1) < 0.1 ? 'pass' : 'fail');
    }),
    runs,
  );
});
