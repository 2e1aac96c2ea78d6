import { expectedCurve, operatingPoint } from '@truesweep/core';
import { test } from 'vitest';

const circuit = {
  source: { volts: 5, ohms: 0.1 },
  limiter: 1000,
  leads: { supply: 0.2, ground: 0.2, signal: 0.2 },
  sensor: { track: 5000, bottomResidual: 20, topResidual: 20, contact: 50 },
  load: { pullDown: 10e6 },
};

test('the circuit', async ({ bench }) => {
  await bench('one operating point', () => {
    operatingPoint(circuit, 0.4);
  }).run();
  await bench('a curve of 1001 points', () => {
    expectedCurve(circuit, 1001);
  }).run();
});
