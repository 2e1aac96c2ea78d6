import { expectation, scoreSweep, simulateSweep } from '@truesweep/core';
import { expect, test } from 'vitest';
import { passesByTravel } from './passesByTravel.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10_000 },
};
const strokes = [0, 1].flatMap(() => [
  { kind: 'hold', seconds: 0.5 } as const,
  { kind: 'turn', to: 1, seconds: 1.5 } as const,
  { kind: 'hold', seconds: 0.5 } as const,
  { kind: 'turn', to: 0, seconds: 1.5 } as const,
]);
const played = (faults: Parameters<typeof simulateSweep>[0]['faults']) => {
  const { sweep } = simulateSweep({
    circuit,
    movements: [...strokes, { kind: 'hold', seconds: 0.5 }],
    recorder: { interval: 0.001, noise: 0.002 },
    ...(faults && { faults }),
    seed: 3,
  });
  const expected = expectation(circuit, { track: 0.2 });
  const score = scoreSweep(sweep, expected);
  return { expected, score, passes: passesByTravel(sweep.time, sweep.signal, score, expected) };
};

test('every pass of a sound sensor lies on the expected curve, both ways, under load', () => {
  const { expected, passes } = played(undefined);
  expect(passes.map(({ direction }) => direction)).toEqual([
    'opening',
    'closing',
    'opening',
    'closing',
  ]);
  for (const { travel, low } of passes) {
    for (let i = 0; i < travel.length; i++) {
      const wanted = expected.curve.volts[Math.round(travel[i]! * 100)]!;
      expect(Math.abs(low[i]! - wanted), `${travel[i]}`).toBeLessThan(0.04);
    }
  }
});

test('a worn spot drops at the same travel on every pass', () => {
  const { passes } = played([
    { kind: 'worn-spot', travel: 0.4, width: 0.02, ohms: Number.POSITIVE_INFINITY },
  ]);
  expect(passes).toHaveLength(4);
  for (const { travel, low } of passes) {
    const deepest = Array.from(low).indexOf(Math.min(...Array.from(low).slice(20)));
    expect(travel[deepest]).toBeGreaterThan(0.385);
    expect(travel[deepest]).toBeLessThan(0.415);
    expect(low[deepest]).toBeLessThan(0.1);
  }
});
