import { describe, expect, test } from 'vitest';
import type { Recorder } from '../capture/captureQuality.js';
import { expectation } from '../expectation/expectation.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { type SweepPlan, simulateSweep } from '../simulate/simulateSweep.js';
import type { Hint } from './hintsOf.js';
import { liveSweep } from './liveSweep.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.03 });
const stroke = (to: number, seconds: number): readonly SimulatedMovement[] => [
  { kind: 'turn', to, seconds },
  { kind: 'hold', seconds: 0.4 },
];
const sound = [{ kind: 'hold', seconds: 0.4 } as const, ...stroke(1, 1), ...stroke(0, 1)];
const quiet = { interval: 1e-3, noise: 0.002, resolution: 0.002 };

/** What hints are told while a recording is fed in pieces of a tenth of a second: all of them, when each came first, and those of the end. */
function hintsOf(
  movements: readonly SimulatedMovement[],
  more: Partial<SweepPlan> = {},
  recorder: Recorder = {},
  { supply, spoil = (volts) => volts }: Spoilt = {},
) {
  const { sweep } = simulateSweep({ circuit, movements, recorder: quiet, seed: 7, ...more });
  const { time } = sweep;
  const factor = supply ? Float64Array.from(time, supply) : undefined;
  const signal = sweep.signal.map((volts, i) => spoil(volts, time[i]!) * (factor?.[i] ?? 1));
  const live = liveSweep(expected, recorder);
  const piece = Math.max(1, Math.round(0.1 / (time[1]! - time[0]!)));
  const first = new Map<string, number>();
  let hints: readonly Hint[] = [];
  for (let at = 0; at < time.length; at += piece) {
    const part = <Column extends Float64Array>(column: Column) => column.subarray(at, at + piece);
    live.feed(part(time), part(signal), factor && part(factor.map((one) => 4 * one)));
    ({ hints } = live.provisional());
    for (const { hint } of hints)
      if (!first.has(hint)) first.set(hint, time[Math.min(time.length, at + piece) - 1]!);
  }
  return { told: [...first.keys()], first, hints };
}

/** What is done to the simulated readings. */
interface Spoilt {
  /** The supply at a time, as a part of what it should be. */
  readonly supply?: (time: number) => number;
  readonly spoil?: (volts: number, time: number) => number;
}

describe('hints', () => {
  test('none for a sweep that shows what it should', () => {
    expect(hintsOf([...sound, ...sound]).told).toEqual([]);
  });

  test('none for a fall by the spring, however fast', () => {
    const snap = { kind: 'snap', seconds: 0.03, restitution: 0.3 } as const;
    const { told } = hintsOf([...sound, ...stroke(1, 1), snap, { kind: 'hold', seconds: 0.6 }]);
    expect(told).toEqual([]);
  });

  test('a stroke that leaves too few samples in a tenth of the travel', () => {
    const { told, hints } = hintsOf([...sound, ...stroke(1, 0.09), ...stroke(0, 1)]);
    expect(told).toContain('stroke-too-fast');
    expect(hints.some(({ hint }) => hint === 'stroke-too-fast')).toBe(false);
  });

  test('an opening that turns round before the stop', () => {
    const { told, hints } = hintsOf([...sound, ...stroke(0.8, 1), ...stroke(0, 1)]);
    expect(told).toEqual(['short-of-open']);
    expect(hints).toEqual([]);
    const whole = hintsOf([...sound, ...stroke(0.8, 1)]).hints;
    expect(whole[0]).toMatchObject({ hint: 'short-of-open', limit: { least: 0.97 }, unit: '1' });
    expect(whole[0]!.measured).toBeCloseTo(0.8, 1);
  });

  test('readings at the end of the range', () => {
    const spoil = (volts: number) => Math.min(2.5, volts);
    const { told } = hintsOf(sound, {}, { range: { low: 0, high: 2.5 } }, { spoil });
    expect(told).toContain('clipped');
    // Where nobody told the range, the whole recording tells it.
    const { sweep } = simulateSweep({ circuit, movements: sound, recorder: quiet, seed: 7 });
    const live = liveSweep(expected);
    live.feed(sweep.time, sweep.signal.map(spoil));
    expect(live.provisional().hints).toEqual([]);
    live.soFar();
    expect(live.provisional().hints.map(({ hint }) => hint)).toEqual(['clipped']);
  });

  test('too few samples a second', () => {
    const recorder = { ...quiet, interval: 0.05 };
    expect(hintsOf(sound, { recorder }).told).toContain('recorder-too-slow');
  });

  test('too much noise, and too coarse a step', () => {
    expect(hintsOf(sound, { recorder: { ...quiet, noise: 0.2 } }).told).toEqual(['noisy']);
    expect(hintsOf(sound, { recorder: { ...quiet, resolution: 0.3 } }).told).toContain(
      'too-coarse',
    );
  });

  test('pick-up from the mains that hides departures', () => {
    const spoil = (volts: number, time: number) => volts + 0.1 * Math.sin(2 * Math.PI * 50 * time);
    expect(hintsOf(sound, {}, {}, { spoil }).told).toContain('hum');
  });

  test('a supply that sags', () => {
    expect(hintsOf(sound, {}, {}, { supply: () => 1 }).told).toEqual([]);
    const supply = (time: number) => (time > 1 && time < 1.5 ? 0.8 : 1);
    expect(hintsOf(sound, {}, {}, { supply }).told).toContain('supply-sags');
  });

  test('each within a second of what it is about', () => {
    const from = (start: number, wrong: (volts: number, time: number) => number) => ({
      spoil: (volts: number, time: number) => (time < start ? volts : wrong(volts, time)),
    });
    // At rest until 0.4 s, open from 1.4 s to 1.8 s, closed again from 2.8 s on.
    const noisy = from(2, (volts, time) => volts + 0.5 * Math.sin(1e6 * time ** 2));
    expect(hintsOf(sound, {}, {}, noisy).first.get('noisy')).toBeLessThan(3);
    const hum = from(1.5, (volts, time) => volts + 0.3 * Math.sin(2 * Math.PI * 50 * time));
    expect(hintsOf([...sound, ...sound], {}, {}, hum).first.get('hum')).toBeLessThan(2.5);
    const clipped = from(0, (volts) => Math.min(2.5, volts));
    const range = { low: 0, high: 2.5 };
    expect(hintsOf(sound, {}, { range }, clipped).first.get('clipped')).toBeLessThan(2.1);
    const sag = { supply: (time: number) => (time > 1 ? 0.8 : 1) };
    expect(hintsOf(sound, {}, {}, sag).first.get('supply-sags')).toBeLessThan(2);
    // It turned round at 3.2 s + 1 s; its rest is seen soon after.
    const short = hintsOf([...sound, ...stroke(0.8, 1), ...stroke(0, 1)]);
    expect(short.first.get('short-of-open')).toBeLessThan(5.2);
    const fast = hintsOf([...sound, ...stroke(1, 0.09), ...stroke(0, 1)]);
    expect(fast.first.get('stroke-too-fast')).toBeLessThan(4.3);
  });
});
