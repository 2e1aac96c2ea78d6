import { describe, expect, test } from 'vitest';
import { classOf, drawCase } from './cases/drawCase.js';
import type { CorpusPlan } from './simulator/plan.js';
import { simulate } from './simulator/simulate.js';
import { truthOf } from './truth.js';

/** A sound case by hand on a quiet, fast recorder with everything told. */
const calm: CorpusPlan = (() => {
  const seed = 2 * [...Array(100).keys()].find((at) => classOf(2 * at) === 'sound, by hand')!;
  const plan = drawCase(seed);
  const actual = {
    source: { volts: 5 },
    limiter: 0,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  };
  const { hum: _, ...recorder } = plan.recorder;
  return {
    ...plan,
    nominal: actual,
    actual,
    tolerances: { closedPosition: 0.02, openPosition: 0.03 },
    told: {},
    recorder: {
      ...recorder,
      interval: 1e-3,
      aperture: 0,
      low: 0,
      high: 10,
      step: 1e-3,
      noise: 1e-3,
      offset: 0,
      gain: 0,
      gaps: [],
    },
  };
})();
const truth = (more: Partial<CorpusPlan>) => {
  const plan = { ...calm, ...more };
  return truthOf(plan, simulate(plan));
};

describe('what is true of a recording', () => {
  test('a sound one passes', () => {
    expect(truth({})).toMatchObject({ verdicts: ['pass'], open: [], events: [], adequate: true });
  });

  test('a lifted wiper at 0.3 of travel drops from 1.7 V to the rest level on every pass, and fails', () => {
    const spot = { kind: 'worn-spot', from: 0.29, to: 0.31, ohms: 'lifted', chance: 1 } as const;
    const { events, verdicts, causes } = truth({
      className: 'worn spot',
      faults: [spot],
      cable: 50e-12,
    });
    expect(events.length).toBeGreaterThanOrEqual(6);
    for (const { depth, travel, kinds } of events) {
      expect(depth).toBeCloseTo(-1.7, 1);
      expect(travel).toBeCloseTo(0.3, 1);
      expect(kinds).toEqual(['dropout']);
    }
    expect(verdicts).toEqual(['fail']);
    expect(causes).toEqual(['track']);
  });

  test('the visibility ratio is the depth over 1.5 % of the span where nothing else is larger', () => {
    const { visible, events } = truth({ faults: [{ kind: 'cracked', travel: 0.5, shift: 0.05 }] });
    expect(visible).toBeCloseTo(0.015 * 4, 4);
    for (const { ratio, depth } of events) expect(ratio).toBe(Math.abs(depth) / visible);
    expect(events[0]!.ratio).toBeCloseTo((0.05 * 5) / 0.06, 1);
  });

  test('one shallow departure is marginal, and interference both ways too', () => {
    const pulse = (time: number, volts: number) => ({ time, volts, hertz: 0, decay: 4e-3 });
    const bursts = [pulse(0.2, 1), pulse(1.2, -1), pulse(2.2, 1), pulse(2.9, -1)];
    expect(truth({ faults: [{ kind: 'interference', bursts }] }).verdicts).toEqual(['marginal']);
    const slipped = { kind: 'slipped', time: 5, shift: 0.022 } as const;
    expect(truth({ faults: [slipped] }).verdicts).toEqual(['marginal']);
  });

  test('a recording that is too slow, or never at the open stop, is inconclusive', () => {
    const slow = { ...calm.recorder, interval: 0.02 };
    expect(truth({ recorder: slow }).verdicts).toEqual(['inconclusive']);
    const partial = calm.moves.map((move) =>
      move.kind === 'stroke' && move.to === 1 ? { ...move, to: 0.6 } : move,
    );
    expect(truth({ moves: partial }).verdicts).toEqual(['inconclusive']);
  });

  test('an open end outside by more than 2.5 % of the span fails, by less is marginal', () => {
    const off = (openPosition: number) => ({
      ...calm.actual,
      sensor: { ...calm.actual.sensor, openPosition },
    });
    expect(truth({ className: 'wrong open end', actual: off(0.94) }).verdicts).toEqual([
      'marginal',
    ]);
    expect(truth({ className: 'wrong open end', actual: off(0.97) }).verdicts).toEqual(['fail']);
  });
});
