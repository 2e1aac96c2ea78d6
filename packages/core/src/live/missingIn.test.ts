import { expect, test } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import { scoreSweep } from '../score/scoreSweep.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { missingIn } from './missingIn.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.03 });
const rest: SimulatedMovement = { kind: 'hold', seconds: 0.5 };
const opening: readonly SimulatedMovement[] = [{ kind: 'turn', to: 1, seconds: 1 }, rest];
const pass: readonly SimulatedMovement[] = [...opening, { kind: 'turn', to: 0, seconds: 1 }, rest];
const snap: readonly SimulatedMovement[] = [
  ...opening,
  { kind: 'snap', seconds: 0.06, restitution: 0.3 },
  rest,
];

function missing(
  movements: readonly SimulatedMovement[],
  more: object = {},
  stretches: object = {},
) {
  const recorder = { interval: 1e-3, noise: 0.002, resolution: 0.002 };
  const { sweep } = simulateSweep({
    circuit,
    movements: [rest, ...movements],
    recorder,
    seed: 3,
    ...more,
  });
  return missingIn(scoreSweep({ ...sweep, ...stretches }, expected));
}

test('of one sweep: two more, three snaps, and the harness', () => {
  expect(missing(pass)).toEqual([
    { missing: 'sweeps', count: 2 },
    { missing: 'snaps', count: 3 },
    { missing: 'test', test: 'harness-flexed' },
  ]);
});

test('nothing where all was recorded', () => {
  const all = [...pass, ...pass, ...pass, ...snap, ...snap, ...snap, rest];
  const flexed = { stretches: [{ kind: 'harness-flexed', start: 0, end: 0.4 }] };
  expect(missing(all, {}, flexed)).toEqual([]);
});

test('the housing is tapped too where something was found', () => {
  const faults = [{ kind: 'worn-spot', travel: 0.4, width: 0.03, ohms: Number.POSITIVE_INFINITY }];
  expect(missing(pass, { faults })).toContainEqual({ missing: 'test', test: 'housing-tapped' });
});
