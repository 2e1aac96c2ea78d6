import { describe, expect, test } from 'vitest';
import type { Sweep } from '../capture/sweep.js';
import { expectation } from '../expectation/expectation.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { scoreSweep } from './scoreSweep.js';

const circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { track: 0.2, closedPosition: 0.02, openPosition: 0.03 });
const pass = [
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 1, seconds: 1.2 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 0, seconds: 1.1 },
] as const;
const recorded = (interval: number, faults: Parameters<typeof simulateSweep>[0]['faults'] = []) =>
  simulateSweep({
    circuit,
    movements: [...pass, ...pass, ...pass, { kind: 'hold', seconds: 0.3 }],
    recorder: { interval, noise: 0.003, resolution: 0.002 },
    faults,
    seed: 5,
  }).sweep;
const sweep = recorded(1e-3);

const inUnits = (volts: number, seconds = 1, of: Sweep = sweep, round = (one: number) => one) =>
  scoreSweep(
    {
      time: of.time.map((at) => at / seconds),
      signal: of.signal.map((one) => round(one / volts)),
    },
    expected,
  );

describe('numbers in another unit than they were taken for', () => {
  test.each([
    ['mV', 1e-3, undefined],
    ['%', 0.05, undefined],
    ['counts', 5 / 1023, 10],
    ['counts', 5 / 4095, 12],
    ['counts', 5 / 65_535, 16],
  ] as const)(
    'the signal in %s of %s V: inconclusive, with the unit that fits',
    (unit, volts, bits) => {
      const round = bits ? Math.round : undefined;
      const score = inUnits(volts, 1, sweep, round);
      expect(score).toMatchObject({
        verdict: 'inconclusive',
        causes: [{ cause: 'recording', weight: 1 }],
        advice: ['tell-units'],
        findings: [],
      });
      const [first] = score.unitsThatFit!;
      expect(first).toMatchObject({ column: 'signal', unit, ...(bits && { bits }) });
      expect(first!.voltsPerUnit).toBeCloseTo(volts, 12);
    },
  );

  test.each([
    ['ms', 1e-3],
    ['µs', 1e-6],
  ] as const)('the times in %s: inconclusive, with the unit that fits', (unit, seconds) => {
    for (const interval of [1e-3, 1e-2]) {
      const score = inUnits(1, seconds, recorded(interval));
      expect(score).toMatchObject({
        verdict: 'inconclusive',
        advice: ['tell-units'],
        unitsThatFit: [{ column: 'time', unit }],
      });
    }
  });

  test('right units are judged, with interference beyond the source and a slow hand too', () => {
    expect(inUnits(1).verdict).toBe('pass');
    expect(inUnits(1, 0.1).unitsThatFit).toBeUndefined();
    const disturbed = sweep.signal.map((volts, i) => (i % 97 < 9 ? 30 : volts));
    const score = scoreSweep({ ...sweep, signal: disturbed }, expected);
    expect(score.unitsThatFit).toBeUndefined();
    expect(score.findings.length).toBeGreaterThan(10);
  });

  test('a signal below ground, as of a source the wrong way round, is no matter of units', () => {
    const reversed = { time: sweep.time, signal: sweep.signal.map((volts) => -volts) };
    const { verdict, unitsThatFit } = scoreSweep(reversed, expected);
    expect(unitsThatFit).toBeUndefined();
    expect(verdict).toBe('fail');
  });

  test('a signal pulled to a higher voltage is one that the hook-up can make', () => {
    const pulled = { ...circuit, load: { pullUp: { ohms: 10_000, volts: 12 } } };
    const broken = { time: sweep.time, signal: sweep.signal.map(() => 12) };
    const { verdict, unitsThatFit } = scoreSweep(broken, expectation(pulled));
    expect(unitsThatFit).toBeUndefined();
    expect(verdict).toBe('fail');
  });
});
