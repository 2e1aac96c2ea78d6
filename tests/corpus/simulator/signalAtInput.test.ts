import { operatingPoint } from '@truesweep/core';
import { expect, test } from 'vitest';
import { drawCase } from '../cases/drawCase.js';
import type { CorpusPlan } from './plan.js';
import { randomStream } from './randomStream.js';
import { signalAtInput } from './signalAtInput.js';

const at = 0.4;
const still = new Float64Array(20_000).fill(at);
const played = (plan: CorpusPlan, faults: CorpusPlan['faults']): Float64Array =>
  signalAtInput(plan, faults, still, 1e-4, randomStream(1));
const soundPlans = Array.from({ length: 20 }, (_, i) => drawCase(2 * i));

function solved({ actual }: CorpusPlan, contact: number): number {
  const { closedPosition = 0, openPosition = 1 } = actual.sensor;
  const place = closedPosition + at * (openPosition - closedPosition);
  const circuit = { ...actual, sensor: { ...actual.sensor, contact } };
  return operatingPoint(circuit, place).output as number;
}

test('without a fault the signal is that of the solved circuit', () => {
  for (const plan of soundPlans)
    expect(Math.abs(played(plan, [])[0]! - solved(plan, 0))).toBeLessThan(
      1e-4 * plan.actual.source.volts,
    );
});

test('behind dirt the signal settles where the solved circuit with a contact resistance has it', () => {
  for (const plan of soundPlans) {
    for (const ohms of [1e3, 30e3, 1e6]) {
      const signal = played(plan, [{ kind: 'worn-spot', from: 0.3, to: 0.5, ohms, chance: 1 }]);
      expect(Math.abs(signal.at(-1)! - solved(plan, ohms))).toBeLessThan(
        1e-4 * plan.actual.source.volts,
      );
    }
  }
});

test('a lifted wiper approaches the rest level with the time constant of load and cable', () => {
  const plan = { ...soundPlans[0]!, cable: 500e-12 };
  const actual = { ...plan.actual, load: { pullDown: 10e6 } };
  const signal = played({ ...plan, actual }, [
    { kind: 'worn-spot', from: 0.3, to: 0.5, ohms: 'lifted', chance: 1 },
  ]);
  const begun = solved({ ...plan, actual }, 0);
  expect(signal[49]! / begun).toBeCloseTo(Math.exp(-0.005 / (10e6 * 500e-12)), 3);
  expect(signal.at(-1)!).toBeCloseTo(0, 9);
});
