import { expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { carryToBench, carryToVehicle, type Hookup } from './carryReading.js';

const bench: Circuit = {
  source: { volts: 4.8 },
  limiter: 1000,
  sensor: { track: 4000, bottomResidual: 20, contact: 300 },
  load: { pullDown: 10e6 },
};
const vehicle: Hookup = {
  source: { volts: 5.02 },
  limiter: 0,
  leads: { ground: 0.4 },
  load: { pullDown: 220e3, pullUp: { ohms: 470e3, volts: 5.02 } },
};

test.each([0, 0.12, 0.5, 0.93, 1])(
  'the same place of the wiper on both hook-ups: %d',
  (position) => {
    const onBench = operatingPoint(bench, position).output as number;
    const onVehicle = operatingPoint({ ...vehicle, sensor: bench.sensor }, position)
      .output as number;
    const there = carryToVehicle({ volts: onBench }, bench, vehicle);
    if (there.kind !== 'carried') throw new Error(there.kind);
    expect(there.volts).toBeCloseTo(onVehicle, 9);
    expect(there.ratio).toBeCloseTo(onVehicle / 5.02, 9);
    expect(there.position).toBeCloseTo(position, 9);
    const back = carryToBench({ volts: there.volts }, bench, vehicle);
    expect(back.kind === 'carried' && back.volts).toBeCloseTo(onBench, 9);
  },
);

test('the uncertainty of the reading goes along, scaled by the two slopes', () => {
  const carried = carryToVehicle({ volts: 2, uncertainty: 0.02 }, bench, vehicle);
  if (carried.kind !== 'carried') throw new Error(carried.kind);
  expect(carried.low).toBeLessThan(carried.volts);
  const slope = (5.02 / 4.8) * (5000 / 4000);
  expect((carried.high - carried.low) / 0.04 / slope).toBeCloseTo(1, 1);
});

test('a falling vehicle hook-up keeps low below high', () => {
  const { sensor: _, ...hookup } = bench;
  const swapped: Hookup = {
    ...hookup,
    source: { volts: 5 },
    load: { pullUp: { ohms: 100, volts: 50 } },
  };
  const carried = carryToVehicle({ volts: 3.5, uncertainty: 0.1 }, bench, swapped);
  if (carried.kind !== 'carried') throw new Error(carried.kind);
  expect(carried.low).toBeLessThanOrEqual(carried.volts);
  expect(carried.high).toBeGreaterThanOrEqual(carried.volts);
});

test('what the reading cannot say is passed on', () => {
  expect(carryToVehicle({ volts: 4.7 }, bench, vehicle).kind).toBe('impossible');
  const lifted = { ...bench, sensor: { track: 4000, contact: Number.POSITIVE_INFINITY } };
  expect(carryToVehicle({ volts: 0 }, lifted, vehicle).kind).toBe('insensitive');
});

test.each([
  [{ volts: 1 }, bench, { ...vehicle, source: { volts: 0 } }, 'vehicle.source.volts'],
  [{ volts: 1 }, bench, { ...vehicle, limiter: -1 }, 'vehicle.limiter'],
  [{ volts: 1 }, { ...bench, limiter: Number.NaN }, vehicle, 'bench.limiter'],
  [{ volts: Number.NaN }, bench, vehicle, 'reading.volts'],
] as const)('refuses (%#) by path', (reading, from, to, path) => {
  expect(() => carryToVehicle(reading, from, to)).toThrow(
    expect.objectContaining({ name: 'InputError', path }),
  );
  expect(() => carryToBench(reading, from, to)).toThrow(expect.objectContaining({ path }));
});
