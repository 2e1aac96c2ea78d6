import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { expectation } from '../expectation/expectation.js';
import type { Score } from '../score/score.js';
import { scoreSweep } from '../score/scoreSweep.js';
import type { SimulatedFault, WornSpot } from '../simulate/faults.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { type SimulatedRecorder, simulateSweep } from '../simulate/simulateSweep.js';
import { compareSweeps } from './compareSweeps.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 1e6 },
};
const stroke = (to: number): readonly SimulatedMovement[] => [
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to, seconds: 1.2 },
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 0, seconds: 1.2 },
];
const usual: SimulatedRecorder = { interval: 1e-3, noise: 0.003, resolution: 0.002 };

/** Three times open and closed: six passes. */
function judged(
  faults: readonly SimulatedFault[] = [],
  {
    recorder = usual,
    to = 1,
    closedPosition = 0.12,
    volts = 5,
    load = circuit.load,
  }: {
    recorder?: SimulatedRecorder;
    to?: number;
    closedPosition?: number;
    volts?: number;
    load?: Circuit['load'];
  } = {},
): Score {
  const hookUp = { ...circuit, source: { volts }, load };
  const { sweep } = simulateSweep({
    circuit: { ...hookUp, sensor: { ...circuit.sensor, closedPosition } },
    movements: [...stroke(to), ...stroke(to), ...stroke(to), { kind: 'hold', seconds: 0.5 }],
    recorder,
    faults,
    seed: 3,
  });
  return scoreSweep(sweep, expectation(hookUp, { closedPosition: 0.03, openPosition: 0.03 }));
}

const worn = (change: Partial<WornSpot> = {}): WornSpot => ({
  kind: 'worn-spot',
  travel: 0.4,
  width: 0.02,
  ohms: Number.POSITIVE_INFINITY,
  ...change,
});

describe('compareSweeps', () => {
  const sound = judged();
  const withSpot = judged([worn()]);

  test('a spot that is gone has vanished, with the chance that six passes missed it', () => {
    const { spots, verdict } = compareSweeps(withSpot, sound);
    expect(verdict).toEqual({ before: 'fail', after: 'pass' });
    expect(spots).toEqual([
      {
        outcome: 'vanished',
        kind: 'dropout',
        before: expect.objectContaining({ spot: 0, passes: 6, seen: 6 }),
        missedByChance: expect.closeTo(1 / 1716, 9),
      },
    ]);
    expect(spots[0]!.before!.travel).toBeCloseTo(0.4, 2);
  });

  test('a new spot has appeared', () => {
    const [spot, ...more] = compareSweeps(sound, withSpot).spots;
    expect(spot).toMatchObject({ outcome: 'appeared', kind: 'dropout', after: { seen: 6 } });
    expect(spot!.missedByChance).toBeLessThan(0.001);
    expect(more).toEqual([]);
  });

  test('a spot that stayed, here at another source voltage', () => {
    const [spot, ...more] = compareSweeps(withSpot, judged([worn()], { volts: 12 })).spots;
    expect(spot).toMatchObject({ outcome: 'stayed', kind: 'dropout' });
    expect(Math.abs(spot!.change!)).toBeLessThan(3 * spot!.uncertainty! + 0.01);
    expect(more).toEqual([]);
  });

  test('a spot shrinks with its resistance, and grows with it', () => {
    const dirty = judged([worn({ ohms: 1e6 })]);
    const cleaner = judged([worn({ ohms: 200e3 })]);
    const [shrunk] = compareSweeps(dirty, cleaner).spots;
    // Of 1 MΩ to ground through 1 MΩ half is left, through 200 kΩ five sixths: a change of a third of the level.
    expect(shrunk).toMatchObject({ outcome: 'shrank', before: { seen: 6 }, after: { seen: 6 } });
    expect(shrunk!.change! / shrunk!.before!.depth).toBeCloseTo(-2 / 3, 1);
    expect(compareSweeps(cleaner, dirty).spots[0]!.outcome).toBe('grew');
  });

  test('places farther apart than 3 % of travel are two, in the order of travel', () => {
    const { spots } = compareSweeps(withSpot, judged([worn({ travel: 0.5 })]));
    expect(spots.map(({ outcome }) => outcome)).toEqual(['vanished', 'appeared']);
  });

  test('what the other recording could not have shown has not vanished', () => {
    const because = (after: Score, before = withSpot) =>
      compareSweeps(before, after).spots.map((spot) => [spot.outcome, spot.because]);
    const slow = judged([], { recorder: { ...usual, interval: 0.1 } });
    expect(because(slow)).toEqual([['could-not-show', 'too-short']]);
    expect(because(judged([], { to: 0.3 }))).toEqual([['could-not-show', 'not-passed']]);
    const shallow = judged([worn({ ohms: 80e3 })]);
    const noisy = judged([], { recorder: { ...usual, noise: 0.05 } });
    expect(because(noisy, shallow)).toEqual([['could-not-show', 'too-shallow']]);
    const blind = { ...sound, couldShow: { blind: [[0, 0.5]] as const } };
    expect(because(blind)).toEqual([['could-not-show', 'blind']]);
  });

  test('passes are counted by travel, however the load bends the curve', () => {
    const load = { pullDown: 2000 };
    // At 59 % of the travel this output has gone 52 % of its way.
    const spot = [worn({ travel: 0.57 })];
    const loaded = judged(spot, { load });
    expect(loaded.spots).toMatchObject([{ passes: 6, seen: 6 }]);
    const partly = judged([], { load, to: 0.59 });
    expect(compareSweeps(loaded, partly).spots).toEqual([
      expect.objectContaining({ outcome: 'vanished', missedByChance: expect.closeTo(1 / 1716, 9) }),
    ]);
    const short = judged([], { load, to: 0.5 });
    expect(compareSweeps(loaded, short).spots).toMatchObject([
      { outcome: 'could-not-show', because: 'not-passed' },
    ]);
    expect(compareSweeps(judged(spot), loaded).spots).toMatchObject([
      { before: { passes: 6 }, after: { passes: 6 } },
    ]);
  });

  test('readings at the stops change by more than their uncertainty, or not', () => {
    const moved = compareSweeps(sound, judged([], { closedPosition: 0.13 }));
    // 1 % of the track is 40 Ω of 5 kΩ across 5 V.
    expect(moved.closed!.change).toBeCloseTo(0.04, 2);
    expect(moved.closed).toMatchObject({ significant: true });
    expect(moved.closed!.uncertainty).toBeLessThan(0.01);
    expect(compareSweeps(sound, sound)).toMatchObject({
      spots: [],
      outsideSpots: { before: 0, after: 0 },
      closed: { change: 0, significant: false },
      open: { change: 0, significant: false },
    });
  });

  test('departures while the throttle rested belong to no spot', () => {
    const loose = judged([{ kind: 'loose-connection', at: [{ time: 0.1, seconds: 0.02 }] }]);
    expect(compareSweeps(loose, sound).outsideSpots).toEqual({ before: 1, after: 0 });
  });

  test('is plain data, and refuses what is no score', () => {
    const comparison = compareSweeps(withSpot, sound);
    expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
    expect(() => compareSweeps(sound, undefined as unknown as Score)).toThrow(
      expect.objectContaining({ code: 'missing', path: 'after' }),
    );
  });
});

test('spots without the check that their depth is measured by are refused', () => {
  const worn = judged([{ kind: 'worn-spot', travel: 0.4, width: 0.05, ohms: 1e12 }]);
  expect(worn.spots).not.toEqual([]);
  expect(() => compareSweeps({ ...worn, checks: [] }, worn)).toThrow(
    expect.objectContaining({ name: 'InputError', code: 'missing', path: 'before.checks' }),
  );
});
