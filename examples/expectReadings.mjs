// What should a sound sensor read on this bench? `node examples/expectReadings.mjs`
import {
  expectedWindows,
  formatQuantity,
  isDetermined,
  operatingPoint,
  positionAt,
} from '@truesweep/core';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.88 },
  load: { pullDown: 10e6 },
};
const tolerances = { track: 0.2, limiter: 0.05, closedPosition: 0.02, openPosition: 0.03 };

const { closed, open } = expectedWindows(circuit, tolerances);
for (const [stop, { low, nominal, high }] of Object.entries({ closed, open })) {
  const [from, about, to] = [low, nominal, high].map((volts) => formatQuantity(volts, 'V'));
  console.log(`${stop}: about ${about}, from ${from} to ${to}`);
}

const amps = operatingPoint(circuit, positionAt(circuit.sensor, 1)).parts.limiter?.amps;
if (amps !== undefined && isDetermined(amps)) {
  console.log(`through the limiter: ${formatQuantity(amps, 'A')}`);
}
