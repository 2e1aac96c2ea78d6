import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { expectation } from '../expectation/expectation.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { scoreSweep } from './scoreSweep.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 1e6 },
};

const stroke = [
  { kind: 'turn', to: 1, seconds: 1.5 },
  { kind: 'hold', seconds: 0.7 },
  { kind: 'turn', to: 0, seconds: 1.5 },
  { kind: 'hold', seconds: 0.7 },
] as const;

const sound = (track: number) =>
  simulateSweep({
    circuit: { ...circuit, sensor: { ...circuit.sensor, track } },
    movements: [{ kind: 'hold', seconds: 0.7 }, ...stroke, ...stroke, ...stroke],
    recorder: { interval: 0.001, noise: 0.002, resolution: 0.001 },
    seed: 3,
  }).sweep;

describe('a sound sensor whose tolerances were left out', () => {
  test.each([5000, 5600])('of %d Ω is no pass, and the advice says what is missing', (track) => {
    const recorder = { resolution: 0.001, uncertainty: 0.005 };
    const bare = scoreSweep(sound(track), expectation(circuit), recorder);
    expect(bare.verdict).not.toBe('pass');
    expect(bare.advice).toContain('state-tolerances');
    expect(bare.advice).not.toContain('record-whole-strokes');
    const stated = { track: 0.2, limiter: 0.05, closedPosition: 0.02, openPosition: 0.02 };
    const told = scoreSweep(sound(track), expectation(circuit, stated), recorder);
    expect(told.verdict).toBe('pass');
    expect(told.advice).not.toContain('state-tolerances');
  });
});
