import { describe, expect, test } from 'vitest';
import { throughCapacitor } from '../../../../tests/corpus/throughCapacitor.js';
import type { Circuit } from '../circuit/circuit.js';
import { expectation } from '../expectation/expectation.js';
import { scoreSweep } from '../score/scoreSweep.js';
import type { SimulatedFault } from '../simulate/faults.js';
import { type SimulatedSweep, simulateSweep } from '../simulate/simulateSweep.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 47_000 },
};

/** One slow pass and a snap, at the rate of a sound card. */
function simulated(faults: readonly SimulatedFault[]): SimulatedSweep {
  return simulateSweep({
    circuit,
    movements: [
      { kind: 'hold', seconds: 0.3 },
      { kind: 'turn', to: 1, seconds: 1.2 },
      { kind: 'hold', seconds: 0.3 },
      { kind: 'snap', seconds: 0.03, restitution: 0.3 },
      { kind: 'hold', seconds: 0.4 },
    ],
    recorder: { interval: 1 / 44_100, noise: 0.002 },
    faults,
    seed: 3,
  });
}

/** The time constant of a capacitor with a corner of 5 Hz, s. */
const timeConstant = 1 / (2 * Math.PI * 5);

const score = (faults: readonly SimulatedFault[]) =>
  scoreSweep(throughCapacitor(simulated(faults).sweep, timeConstant), expectation(circuit), {
    coupling: 'ac',
  });

describe('a recording through a capacitor', () => {
  test('of a sound sensor never passes: it says that the coupling hides the levels', () => {
    const sound = score([]);
    expect(sound).toMatchObject({ verdict: 'inconclusive', abrupt: [], findings: [] });
    expect(sound.causes).toEqual([{ cause: 'recording', weight: 1 }]);
    expect(sound.advice).toEqual(['couple-directly']);
    expect(sound.checks.find(({ check }) => check === 'coupling')?.outcome).toBe('cannot-tell');
  });

  test('shows a dropout with its time and depth, and leaves its cause open', () => {
    const spot = { kind: 'worn-spot', travel: 0.5, width: 0.02, ohms: 1e7 } as const;
    const worn = score([spot]);
    expect(worn.verdict).toBe('fail');
    expect(worn.causes.map(({ weight }) => weight)).toEqual([0.3333, 0.3333, 0.3333]);
    expect(worn.confidence).toBeUndefined();
    expect(worn.advice).toEqual(['prove-connection', 'couple-directly']);
    const [first] = worn.abrupt!;
    const [truth] = simulated([spot]).events;
    // A leap is seen between readings 1 ms apart.
    expect(Math.abs(first!.start - truth!.start)).toBeLessThan(1.1e-3);
    expect(Math.abs(first!.end - truth!.end)).toBeLessThan(1.1e-3);
    expect(first!.depth).toBeLessThan(-1.5);
  });

  test('a coupling that is none is refused', () => {
    const recorder = { coupling: 'direct' as 'dc' };
    expect(() => scoreSweep(simulated([]).sweep, expectation(circuit), recorder)).toThrow(
      expect.objectContaining({ code: 'unknown-choice', path: 'recorder.coupling' }),
    );
  });
});
