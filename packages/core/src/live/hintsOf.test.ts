import { describe, expect, test } from 'vitest';
import type { Recorder } from '../capture/captureQuality.js';
import { expectation } from '../expectation/expectation.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { type SweepPlan, simulateSweep } from '../simulate/simulateSweep.js';
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

/** The hints that are told so far when a recording has been fed, in pieces of a quarter of a second. */
function hintsOf(
  movements: readonly SimulatedMovement[],
  more: Partial<SweepPlan> = {},
  recorder: Recorder = {},
  supply?: (time: number) => number,
) {
  const { sweep } = simulateSweep({ circuit, movements, recorder: quiet, seed: 7, ...more });
  const { time } = sweep;
  const factor = supply ? Float64Array.from(time, supply) : undefined;
  const signal = factor ? sweep.signal.map((volts, i) => volts * factor[i]!) : sweep.signal;
  const live = liveSweep(expected, recorder);
  const piece = Math.round(0.25 / (time[1]! - time[0]!));
  let told: readonly string[] = [];
  for (let at = 0; at < time.length; at += piece) {
    const part = <Column extends Float64Array>(column: Column) => column.subarray(at, at + piece);
    live.feed(part(time), part(signal), factor && part(factor.map((one) => 4 * one)));
    told = [...told, ...live.provisional().hints.map(({ hint }) => hint)];
  }
  return { told: [...new Set(told)], hints: live.provisional().hints };
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
    const cut = simulateSweep({ circuit, movements: sound, recorder: quiet, seed: 7 });
    const live = liveSweep(expected, { range: { low: 0, high: 2.5 } });
    live.feed(
      cut.sweep.time,
      cut.sweep.signal.map((volts) => Math.min(2.5, volts)),
    );
    expect(live.provisional().hints.map(({ hint }) => hint)).toContain('clipped');
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
    const { sweep } = simulateSweep({ circuit, movements: sound, recorder: quiet, seed: 7 });
    const live = liveSweep(expected);
    const hum = sweep.signal.map(
      (volts, i) => volts + 0.1 * Math.sin(2 * Math.PI * 50 * sweep.time[i]!),
    );
    live.feed(sweep.time, hum);
    expect(live.provisional().hints.map(({ hint }) => hint)).toEqual(['hum']);
  });

  test('a supply that sags', () => {
    expect(hintsOf(sound, {}, {}, () => 1).told).toEqual([]);
    const { told } = hintsOf(sound, {}, {}, (time) => (time > 1 && time < 1.5 ? 0.8 : 1));
    expect(told).toContain('supply-sags');
  });
});
