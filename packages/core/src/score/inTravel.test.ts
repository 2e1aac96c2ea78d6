import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { expectation } from '../expectation/expectation.js';
import { throttleScale } from '../movement/throttleScale.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { inTravel } from './inTravel.js';
import { scoreSweep } from './scoreSweep.js';

/** A bench load of 2 kΩ bends the curve: at half travel the output has gone little more than a third of its way. */
const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 10_000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 2000 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.02 });
const recorder = { interval: 1e-3, noise: 0.002, resolution: 0.001 };

/** To a travel and back by hand, with rests. */
const stroke = (to: number): readonly SimulatedMovement[] => [
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to, seconds: 1.2 },
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 0, seconds: 1.2 },
];

describe('with a load that bends the curve', () => {
  test('a stroke to half travel is told as one', () => {
    const movements = [...stroke(1), ...stroke(0.5), { kind: 'hold', seconds: 0.5 }] as const;
    const { sweep } = simulateSweep({ circuit, movements, recorder, seed: 5 });
    const { strokes, rests } = scoreSweep(sweep, expected);
    expect(strokes.map(({ direction }) => direction)).toEqual([
      'opening',
      'closing',
      'opening',
      'closing',
    ]);
    for (const [i, top] of [1, 0.5].entries()) {
      const [opening, closing] = [strokes[2 * i]!, strokes[2 * i + 1]!];
      expect(Math.abs(opening.to - top)).toBeLessThan(0.02);
      expect(Math.abs(closing.from - top)).toBeLessThan(0.02);
      expect(opening.from).toBeLessThan(0.02);
      expect(closing.to).toBeLessThan(0.02);
    }
    const half = rests.find(({ travel }) => Math.abs(travel - 0.5) < 0.02)!;
    expect(half.volts).toBeCloseTo(expected.curve.volts[50]!, 1);
  });

  test('a finding at a worn spot lies within its pass', () => {
    const { sweep } = simulateSweep({
      circuit,
      movements: [...stroke(1), ...stroke(0.5), { kind: 'hold', seconds: 0.5 }],
      recorder,
      faults: [{ kind: 'worn-spot', travel: 0.45, width: 0.02, ohms: Number.POSITIVE_INFINITY }],
      seed: 5,
    });
    const { strokes, findings } = scoreSweep(sweep, expected);
    expect(findings).toHaveLength(4);
    for (const { start, end, travel } of findings) {
      const { from, to } = strokes.find((one) => one.start <= start && one.end >= end)!;
      expect(Math.abs(travel - 0.45)).toBeLessThan(0.02);
      expect(travel).toBeGreaterThan(Math.min(from, to));
      expect(travel).toBeLessThan(Math.max(from, to));
    }
  });
});

test('a rebound is told as the travel above the stop that was reached', () => {
  const stops = { closed: 0.02, open: 1 };
  const scale = throttleScale(expected);
  const { curve } = expected;
  const level = (curve.volts[10]! - curve.volts[0]!) / scale.span;
  const snap = { start: 1, touch: 1.03, settled: 1.2, from: 1, rebounds: [0.98 * level] };
  const { snaps } = inTravel({ strokes: [], rests: [], snaps: [snap], stops }, expected, scale);
  expect(snaps[0]).toMatchObject({ start: 1, touch: 1.03, settled: 1.2, from: 1 });
  expect(snaps[0]!.rebounds[0]).toBeCloseTo(0.1, 9);
});
