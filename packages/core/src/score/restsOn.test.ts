import { describe, expect, test } from 'vitest';
import { defaultCriteria, loosenedCriteria, wholeCriteria } from '../criteria.js';
import { expectation } from '../expectation/expectation.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { isShort, restsOn } from './restsOn.js';
import { scoreSweep } from './scoreSweep.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const tolerances = { source: 0.01, track: 0.2, closedPosition: 0.02, openPosition: 0.03 };
const sweepOnce: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 1, seconds: 1.2, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 0, seconds: 1.1, unevenness: 0.008 },
];
const snapOnce: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 1, seconds: 0.8 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'snap', seconds: 0.03, restitution: 0.3 },
];
const rest: SimulatedMovement = { kind: 'hold', seconds: 0.4 };
const recorded = (movements: readonly SimulatedMovement[]) =>
  simulateSweep({
    circuit,
    movements: [...movements, rest],
    recorder: { interval: 1e-3, noise: 0.003, resolution: 0.002 },
    seed: 3,
  }).sweep;
const expected = expectation(circuit, tolerances);

describe('what a pass rests on', () => {
  test('is the fewest clean looks at a tenth of the travel, and the snaps', () => {
    const ones = Array.from({ length: 10 }, () => 1);
    const rests = restsOn({ opening: ones, closing: [...ones.slice(1), 2] }, 1);
    expect(rests).toMatchObject({ looks: 2, snaps: 1, missedChance: 0.25 });
    expect(isShort(rests)).toBe(true);
    expect(isShort({ ...rests, looks: 6, snaps: 3 })).toBe(false);
    expect(isShort({ ...rests, looks: 6, snaps: 2 })).toBe(true);
  });

  test('one opening and one closing pass, but the rest is asked for first', () => {
    const score = scoreSweep(recorded(sweepOnce), expected, { uncertainty: 0.002 });
    expect(score).toMatchObject({
      verdict: 'pass',
      restsOn: { looks: 2, looksAskedFor: 6, snaps: 0, snapsAskedFor: 3, missedChance: 0.25 },
    });
    expect(score.advice.slice(0, 2)).toEqual(['complete-recording', 'refit']);
  });

  test('three sweeps and three snaps are all that is asked for', () => {
    const whole = [sweepOnce, sweepOnce, sweepOnce, snapOnce, snapOnce, snapOnce].flat();
    const score = scoreSweep(recorded(whole), expected, { uncertainty: 0.002 });
    expect(score.verdict).toBe('pass');
    expect(score.restsOn.snaps).toBe(3);
    expect(score.advice).toEqual(['refit']);
  });
});

describe('an instrument that is too coarse for a window', () => {
  test('is told by itself: a better one is asked for, no further rests', () => {
    const { verdict, advice } = scoreSweep(recorded(sweepOnce), expected, { uncertainty: 0.06 });
    expect(verdict).toBe('inconclusive');
    expect(advice).toContain('finer-instrument');
    expect(advice).not.toContain('record-whole-strokes');
  });

  test('is asked for too where nobody tells how true it is, and a coarse one would not do', () => {
    const narrow = expectation(circuit, { closedPosition: 0.008, openPosition: 0.008 });
    const coarse = scoreSweep(recorded(sweepOnce), narrow, { resolution: 0.02 });
    expect(coarse).toMatchObject({ verdict: 'pass', uncertaintyAssumed: true });
    expect(coarse.advice).toContain('finer-instrument');
    const told = scoreSweep(recorded(sweepOnce), narrow, {
      resolution: 0.02,
      uncertainty: 0.002,
    });
    expect(told.uncertaintyAssumed).toBe(false);
    expect(told.advice).not.toContain('finer-instrument');
  });
});

describe('loosened criteria', () => {
  test('are named with the loosest that a sweep may pass by', () => {
    expect(loosenedCriteria(defaultCriteria)).toEqual([]);
    const loose = wholeCriteria({ visibleSpan: 0.04, returns: 2, samplesInDropout: 4 });
    expect(loosenedCriteria(loose).map(({ name, tooLoose }) => [name, tooLoose])).toEqual([
      ['visibleSpan', false],
      ['returns', false],
    ]);
  });

  test('beyond their loosest no sweep passes, and tighter limits are asked for', () => {
    const worn = simulateSweep({
      circuit,
      movements: [...sweepOnce, ...sweepOnce, rest],
      recorder: { interval: 1e-3, noise: 0.003, resolution: 0.002 },
      faults: [{ kind: 'worn-spot', travel: 0.3, width: 0.02, ohms: 1.5e6 }],
      seed: 3,
    }).sweep;
    expect(scoreSweep(worn, expected).verdict).toBe('fail');
    const blind = { visibleSpan: 0.5, coarsestVisible: 0.5 };
    const { verdict, advice, checks } = scoreSweep(worn, expected, {}, blind);
    expect(verdict).toBe('inconclusive');
    expect(advice).toContain('tighten-criteria');
    expect(checks).toContainEqual(
      expect.objectContaining({ check: 'criteria', outcome: 'cannot-tell', measured: 2 }),
    );
  });
});
