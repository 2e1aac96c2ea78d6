import { describe, expect, test } from 'vitest';
import type { Recorder } from '../capture/captureQuality.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { expectation } from '../expectation/expectation.js';
import type { SimulatedFault } from '../simulate/faults.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { type SweepPlan, simulateSweep } from '../simulate/simulateSweep.js';
import { runningMedian } from '../statistics/runningMedian.js';
import type { CheckCode, Score } from './score.js';
import { scoreSweep } from './scoreSweep.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const tolerances = { source: 0.01, track: 0.2, closedPosition: 0.02, openPosition: 0.03 };

const pass: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 1, seconds: 1.2, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'snap', seconds: 0.03, restitution: 0.3 },
  { kind: 'hold', seconds: 0.4 },
];
const plan: SweepPlan = {
  circuit,
  movements: [...pass, ...pass, ...pass],
  recorder: { interval: 1e-3, noise: 0.003, resolution: 0.002 },
  seed: 11,
};

function judge(faults: readonly SimulatedFault[] = [], change: Partial<SweepPlan> = {}): Score {
  const { sweep } = simulateSweep({ ...plan, faults, ...change });
  return scoreSweep(sweep, expectation(circuit, tolerances));
}

const outcome = (score: Score, code: CheckCode) =>
  score.checks.find(({ check }) => check === code)?.outcome;

describe('scoreSweep', () => {
  test('a sound sensor passes, its bounce is normal', () => {
    const score = judge();
    expect(score).toMatchObject({
      verdict: 'pass',
      findings: [],
      causes: [{ cause: 'none', weight: 1 }],
    });
    expect(score.advice).toContain('refit');
    expect(score.confidence).toBeGreaterThan(0.95);
    expect(score.snaps).toHaveLength(3);
    expect(score.snaps[0]!.rebounds[0]).toBeCloseTo(0.09, 1);
    expect(outcome(score, 'closed-rest')).toBe('conforms');
    expect(score.supplyAssumed).toBe(true);
  });

  test('a worn spot fails, by the track, with its travel and depth', () => {
    const score = judge([
      { kind: 'worn-spot', travel: 0.1, width: 0.03, ohms: Number.POSITIVE_INFINITY },
    ]);
    expect(score).toMatchObject({ verdict: 'fail', causes: [{ cause: 'track' }] });
    expect(score.causes[0]!.weight).toBeGreaterThan(0.95);
    expect(score.confidence).toBeGreaterThan(0.95);
    expect(score.findings.length).toBeGreaterThanOrEqual(3);
    for (const { kind, travel, depth } of score.findings.filter(
      ({ during }) => during === 'opening',
    )) {
      expect(kind).toBe('dropout');
      expect(travel).toBeCloseTo(0.1, 1);
      expect(depth).toBeLessThan(-0.4);
    }
  });

  test('a loose connection fails but never condemns the part', () => {
    const at = [
      { time: 0.1, seconds: 0.02 },
      { time: 1.1, seconds: 0.01 },
      { time: 3.2, seconds: 0.03 },
    ];
    const score = judge([{ kind: 'loose-connection', at }]);
    expect(score.verdict).toBe('fail');
    expect(score.causes[0]!.cause).toBe('connection');
    expect(score.advice).toContain('prove-connection');
    expect(score.advice).not.toContain('replace-sensor');
  });

  test('interference alone never fails a sensor', () => {
    const at = [0.9, 1.4, 3.1, 5].map((time, i) => ({
      time,
      seconds: 0.003,
      volts: i % 2 ? 0.4 : -0.4,
    }));
    const score = judge([{ kind: 'interference', at }]);
    expect(score.verdict).toBe('marginal');
    expect(score.causes[0]!.cause).toBe('interference');
  });

  test('a recording too slow to show a dropout is inconclusive and says what would be fast enough', () => {
    const score = judge([], { recorder: { ...plan.recorder, interval: 0.05 } });
    expect(score.verdict).toBe('inconclusive');
    expect(score.confidence).toBeUndefined();
    expect(score.advice).toContain('record-faster');
    const check = score.checks.find((one) => one.check === 'sample-interval');
    expect(check).toMatchObject({ outcome: 'cannot-tell', unit: 's' });
    expect(check!.measured).toBeCloseTo(0.05, 12);
    expect(check!.highLimit).toBeCloseTo(0.0075, 9);
  });

  test('how the recorder forms a sample decides how fast is fast enough', () => {
    const at = (interval: number, recorder: Recorder = {}) => {
      const { sweep } = simulateSweep({ ...plan, recorder: { ...plan.recorder, interval } });
      return scoreSweep(sweep, expectation(circuit, tolerances), recorder);
    };
    expect(at(0.007).verdict).toBe('pass');
    expect(at(0.007, { sampling: 'averaged' }).verdict).toBe('inconclusive');
    expect(at(0.0045, { sampling: 'averaged' }).verdict).toBe('pass');
    expect(outcome(at(0.012), 'sample-interval')).toBe('cannot-tell');
    expect(outcome(at(0.012, { sampling: 'peak-kept' }), 'sample-interval')).toBe('conforms');
    const drawn = at(0.001, { sampling: 'interpolated', sampledEvery: 0.01 });
    expect(drawn.verdict).toBe('inconclusive');
    expect(drawn.quality).toMatchObject({ sampledEvery: 0.01, shortestDropout: 0.02 });
  });

  test('lines that were drawn between readings show nothing that those do not', () => {
    const { sweep } = simulateSweep({ ...plan, recorder: { ...plan.recorder, interval: 1e-3 } });
    const signal = sweep.signal.map((volts, i) => {
      const next = sweep.signal[i - (i % 10) + 10] ?? volts;
      return sweep.signal[i - (i % 10)]! * (1 - (i % 10) / 10) + next * ((i % 10) / 10);
    });
    const score = scoreSweep({ ...sweep, signal }, expectation(circuit, tolerances));
    expect(score.verdict).toBe('inconclusive');
    expect(score.quality.sampling).toBe('interpolated');
    expect(score.quality.sampledEvery).toBeCloseTo(0.01, 9);
  });

  test('a recording that was smoothed shows no short dropout: inconclusive, with what to switch off', () => {
    const { sweep } = simulateSweep({ ...plan, recorder: { interval: 1e-3, noise: 0.01 } });
    const signal = runningMedian(sweep.signal, 25);
    const score = scoreSweep({ time: sweep.time, signal }, expectation(circuit, tolerances));
    expect(score.verdict).toBe('inconclusive');
    expect(outcome(score, 'smoothing')).toBe('cannot-tell');
    expect(score.quality.smoothedOver).toBeGreaterThan(7.5e-3);
    expect(score.quality.shortestDropout).toBe(2 * score.quality.smoothedOver);
    expect(score.advice).toContain('record-without-smoothing');
    expect(judge().quality.smoothedOver).toBe(0);
  });

  test('strokes that all begin at full speed are those of no throttle: inconclusive', () => {
    const time = Float64Array.from({ length: 20_000 }, (_, i) => i * 5e-4);
    const { closed, open } = expectation(circuit, tolerances).windows;
    const signal = time.map((at) => {
      const place = at % 2;
      const level = place < 1 ? 1 - Math.exp(-place / 0.15) : Math.exp(-(place - 1) / 0.15);
      return closed.nominal + (open.nominal - closed.nominal) * level;
    });
    const score = scoreSweep({ time, signal }, expectation(circuit, tolerances));
    expect(outcome(score, 'starts')).toBe('cannot-tell');
    expect(score).toMatchObject({ verdict: 'inconclusive', causes: [{ cause: 'recording' }] });
  });

  test('too much noise, a half stroke, gaps at one place, a clipped end: inconclusive', () => {
    expect(judge([], { recorder: { ...plan.recorder, noise: 0.1 } }).verdict).toBe('inconclusive');
    const half = [
      { kind: 'hold', seconds: 0.3 },
      { kind: 'turn', to: 0.5, seconds: 1 },
      { kind: 'hold', seconds: 0.3 },
    ] as const;
    expect(judge([], { movements: half }).verdict).toBe('inconclusive');
    const { sweep } = simulateSweep(plan);
    // Once is in one of three openings, the others saw the place; each time, and nothing did.
    const gaps = (...from: number[]) => {
      const isKept = (i: number) => from.every((at) => i < at || i > at + 100);
      const kept = Array.from(sweep.time.keys()).filter(isKept);
      const gapped = {
        time: Float64Array.from(kept, (i) => sweep.time[i]!),
        signal: Float64Array.from(kept, (i) => sweep.signal[i]!),
      };
      return scoreSweep(gapped, expectation(circuit, tolerances));
    };
    const once = gaps(800);
    expect(outcome(once, 'coverage')).toBe('conforms');
    expect(once.verdict).toBe('pass');
    const always = gaps(800, 3030, 5260);
    expect(always.checks.find(({ check }) => check === 'coverage')).toMatchObject({
      outcome: 'cannot-tell',
      highLimit: 0,
    });
    expect(always.verdict).toBe('inconclusive');
    expect(always.advice).toEqual(['record-faster']);
    const range = { low: 0, high: 3 };
    const clipped = simulateSweep({ ...plan, recorder: { ...plan.recorder, range } });
    const score = scoreSweep(clipped.sweep, expectation(circuit, tolerances), { range });
    expect(outcome(score, 'clipping')).toBe('cannot-tell');
    expect(score.verdict).not.toBe('pass');
  });

  test('an end outside its window fails, a little outside is marginal', () => {
    const off = (closedPosition: number) =>
      judge([], { circuit: { ...circuit, sensor: { ...circuit.sensor, closedPosition } } });
    expect(off(0.155)).toMatchObject({ verdict: 'marginal', causes: [{ cause: 'ends' }] });
    expect(off(0.2)).toMatchObject({ verdict: 'fail', causes: [{ cause: 'ends' }] });
  });

  test('no live output fails, by the wiring', () => {
    const { time } = simulateSweep(plan).sweep;
    const dead = scoreSweep(
      { time, signal: new Float64Array(time.length) },
      expectation(circuit, tolerances),
    );
    expect(dead).toMatchObject({ verdict: 'fail', causes: [{ cause: 'wiring', weight: 1 }] });
  });

  test('what is too short to hold a stroke shows no dead output: it is the recording’s', () => {
    const still = (samples: number, interval: number) =>
      scoreSweep(
        {
          time: Float64Array.from({ length: samples }, (_, i) => i * interval),
          signal: new Float64Array(samples).fill(2.5),
        },
        expectation(circuit, tolerances),
      );
    for (const short of [still(2, 1), still(4000, 5e-13), still(8000, 2.5e-10), still(40, 1)]) {
      expect(short.verdict).toBe('inconclusive');
      expect(short.causes).toEqual([{ cause: 'recording', weight: 1 }]);
      expect(short.advice).toContain('record-whole-strokes');
      expect(outcome(short, 'duration')).toBe('cannot-tell');
    }
    expect(still(100, 0.01).verdict).toBe('fail');
  });

  test('says what was assumed of the stamps, if anything', () => {
    expect(judge().quality.stamps).toEqual({
      clock: 'stamped',
      moved: 0,
      pairs: 0,
      strayed: 0,
      restarts: 0,
    });
    const { time, signal } = simulateSweep(plan).sweep;
    const stampsOf = (change: (at: number, i: number) => number, recorder: Recorder = {}) =>
      scoreSweep({ time: time.map(change), signal }, expectation(circuit, tolerances), recorder)
        .quality.stamps;
    const coarse = stampsOf((at) => Math.floor(at / 0.004) * 0.004);
    expect(coarse).toMatchObject({ clock: 'even', pairs: 0 });
    expect(coarse.moved).toBeGreaterThan(0.0015);
    expect(coarse.moved).toBeLessThan(0.003);
    const halfway = Math.floor(time.length / 2);
    const anew = (at: number, i: number) => (i < halfway ? at : at - time[halfway]!);
    expect(stampsOf(anew)).toMatchObject({ restarts: 1, strayed: 0 });
    const stray = (at: number, i: number) => (i === halfway ? at - 1 : at);
    expect(stampsOf(stray)).toMatchObject({ restarts: 0, strayed: 1 });
    expect(stampsOf(stray, { coupling: 'ac' })).toMatchObject({ clock: 'stamped', strayed: 1 });
    const pairwise = signal.map((volts, i) => {
      const other = signal[Math.min(signal.length - 1, i % 2 === 0 ? i + 1 : i - 1)]!;
      return i % 2 === 0 ? Math.min(volts, other) : Math.max(volts, other);
    });
    const pairs = scoreSweep(
      { time: time.map((at, i) => (i % 2 === 0 ? at : time[i - 1]!)), signal: pairwise },
      expectation(circuit, tolerances),
    ).quality.stamps;
    expect(pairs).toMatchObject({ clock: 'even', pairs: Math.floor(time.length / 2) });
  });

  test('is plain data: it survives JSON', () => {
    const score = judge();
    expect(JSON.parse(JSON.stringify(score))).toEqual(score);
  });

  test('a supply channel takes a sag of the supply out: it is never the track’s', () => {
    const { sweep } = simulateSweep(plan);
    const sag = sweep.time.map((at) => (at > 0.9 && at < 0.92 ? 0.7 : 1));
    const supply = sag.map((part) => 4 * part);
    const signal = sweep.signal.map((volts, i) => volts * sag[i]!);
    const nominal = expectation(circuit, tolerances);
    const without = scoreSweep({ time: sweep.time, signal }, nominal);
    expect(without.verdict).toBe('fail');
    const withSupply = scoreSweep({ time: sweep.time, signal, supply }, nominal);
    expect(withSupply).toMatchObject({
      verdict: 'marginal',
      findings: [],
      causes: [{ cause: 'wiring', weight: 1 }],
      supplyAssumed: false,
    });
    expect(outcome(withSupply, 'supply')).toBe('marginal');
  });

  test('says what it could have shown, how often the throttle came back, which tests were not done', () => {
    const score = judge();
    expect(score.quality.dropoutChance.one).toBe(1);
    expect(score.couldShow.blind).toEqual([]);
    expect(score.couldShow.narrowestSpot).toBeLessThan(0.01);
    expect(score.closedReadings.bySpring).toMatchObject({ count: 3 });
    expect(score.testsNotDone).toEqual(['harness-flexed', 'housing-tapped', 'warmed']);
    const { sweep } = simulateSweep(plan);
    const stretches = [{ kind: 'harness-flexed', start: 0, end: 0.3 }] as const;
    const flexed = scoreSweep({ ...sweep, stretches }, expectation(circuit, tolerances));
    expect(flexed.testsNotDone).toEqual(['housing-tapped', 'warmed']);
  });

  test('a ground lead that breaks while the throttle rests closed is the connection, each time one excursion to its level', () => {
    const { time, signal } = simulateSweep(plan).sweep;
    const { output } = operatingPoint(
      { ...circuit, faults: [{ kind: 'broken-lead', lead: 'ground' }] },
      0.12,
    );
    const breaks = [0.1, 2, 2.2, 4.2, 4.4];
    const isOpen = (now: number) => breaks.some((at) => now >= at && now < at + 0.04);
    const broken = signal.map((volts, i) => (isOpen(time[i]!) ? Number(output) : volts));
    const { findings, causes, verdict } = scoreSweep(
      { time, signal: broken },
      expectation(circuit, tolerances),
    );
    expect(findings.map(({ went }) => went)).toEqual(breaks.map(() => 'to-broken-lead-level'));
    expect(causes[0]?.cause).toBe('connection');
    expect(verdict).toBe('fail');
  });

  test('refuses a recorder that is none', () => {
    const { sweep } = simulateSweep(plan);
    expect(() =>
      scoreSweep(sweep, expectation(circuit), { before: { source: 0, zero: 1 } }),
    ).toThrow(expect.objectContaining({ path: 'recorder.before.source' }));
    expect(() => scoreSweep(sweep, expectation(circuit), { resolution: Number.NaN })).toThrow(
      expect.objectContaining({ path: 'recorder.resolution' }),
    );
  });

  test('refuses an expectation without span', () => {
    const stuck = { ...circuit, sensor: { track: 4000, closedPosition: 0.5, openPosition: 0.5 } };
    expect(() => scoreSweep(simulateSweep(plan).sweep, expectation(stuck))).toThrow(
      expect.objectContaining({ code: 'no-span' }),
    );
  });
});
