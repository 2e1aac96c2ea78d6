// How slow may a recorder be and still show this worn spot? `node examples/meetWornSpot.mjs`.
import { expectation, scoreSweep, simulateSweep } from '@truesweep/core';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.88 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.02 });
/** @type {import('@truesweep/core').SweepPlan['movements']} */
const movements = [
  { kind: 'hold', seconds: 0.5 },
  { kind: 'turn', to: 1, seconds: 1.5 },
  { kind: 'hold', seconds: 0.5 },
  { kind: 'turn', to: 0, seconds: 1.5 },
  { kind: 'hold', seconds: 0.5 },
];
/** @type {import('@truesweep/core').SweepPlan['faults']} */
const faults = [{ kind: 'worn-spot', travel: 0.06, width: 0.01, ohms: Number.POSITIVE_INFINITY }];

for (const interval of [0.001, 0.005, 0.07]) {
  const recorder = { interval, noise: 0.001, resolution: 0.001 };
  const { sweep } = simulateSweep({ circuit, movements, recorder, faults, seed: 5 });
  const { verdict, findings } = scoreSweep(sweep, expected);
  console.log(`a sample every ${1000 * interval} ms: ${verdict}, ${findings.length} findings`);
}
