import { describe, expect, test } from 'vitest';
import type { SimulatedFault } from './faults.js';
import { type SweepPlan, simulateSweep } from './simulateSweep.js';

const plan: SweepPlan = {
  circuit: {
    source: { volts: 5 },
    limiter: 1000,
    sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  },
  movements: [
    { kind: 'hold', seconds: 0.2 },
    { kind: 'turn', to: 1, seconds: 1, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.2 },
    { kind: 'snap', seconds: 0.03, restitution: 0.25 },
    { kind: 'hold', seconds: 0.3 },
  ],
  recorder: { interval: 1e-3, noise: 0.002, resolution: 0.001 },
  seed: 5,
};

const withFault = (fault: SimulatedFault) => simulateSweep({ ...plan, faults: [fault] });

describe('simulateSweep', () => {
  test('one plan gives one sweep, another seed another', () => {
    expect(simulateSweep(plan)).toEqual(simulateSweep(plan));
    expect(simulateSweep({ ...plan, seed: 6 }).sweep.signal).not.toEqual(
      simulateSweep(plan).sweep.signal,
    );
  });

  test('travel runs from stop to stop and rebounds only to the open side, each time less', () => {
    const { travel } = simulateSweep(plan);
    expect(Math.min(...travel)).toBe(0);
    expect(Math.max(...travel)).toBe(1);
    const afterTouch = travel.slice(1431);
    expect(Math.max(...afterTouch)).toBeCloseTo(0.25 ** 2, 3);
    expect(afterTouch.at(-1)).toBe(0);
  });

  test('without faults there are no events and noise is all that is added', () => {
    const { sweep, sound, events } = simulateSweep(plan);
    expect(events).toEqual([]);
    const square = sweep.signal.reduce((sum, volts, i) => sum + (volts - sound[i]!) ** 2, 0);
    expect(Math.sqrt(square / sound.length)).toBeCloseTo(0.002, 3);
  });

  test('a worn spot that lifts the wiper drops the signal to the rest level on each pass', () => {
    const { events } = withFault({
      kind: 'worn-spot',
      travel: 0.2,
      width: 0.1,
      ohms: Number.POSITIVE_INFINITY,
    });
    expect(events).toHaveLength(2);
    for (const { depth, travel } of events) {
      expect(travel).toBeCloseTo(0.2, 1);
      expect(depth).toBeCloseTo(5 * 0.8 * (0.1 + 0.8 * travel), 2);
    }
  });

  test('capacitance across the load slows the fall of a lifted wiper', () => {
    const fault: SimulatedFault = { kind: 'loose-connection', at: [{ time: 1.3, seconds: 0.005 }] };
    const slow = simulateSweep({
      ...plan,
      faults: [fault],
      recorder: { interval: 1e-3, capacitance: 1e-9 },
    });
    expect(slow.events[0]!.depth).toBeLessThan(0.5 * withFault(fault).events[0]!.depth);
  });

  test.each<[SimulatedFault, number]>([
    [{ kind: 'interference', at: [{ time: 0.05, seconds: 0.002, volts: 0.5 }] }, 0.5],
    [{ kind: 'shifted-track', travel: 0.5, shift: 0.05 }, 0.2],
    [{ kind: 'dead-spot', from: 0.4, to: 0.45 }, 0.16],
  ])('fault %# departs from the sound signal by what it should', (fault, depth) => {
    expect(withFault(fault).events[0]!.depth).toBeCloseTo(depth, 1);
  });

  test('clipping and hum are added by the recorder', () => {
    const recorder = { interval: 1e-3, hum: { volts: 0.1, hertz: 50 }, range: { low: 0, high: 3 } };
    const { sweep } = simulateSweep({ ...plan, recorder });
    expect(Math.max(...sweep.signal)).toBe(3);
    const rest = sweep.signal.slice(0, 200);
    expect(Math.max(...rest) - Math.min(...rest)).toBeCloseTo(0.2, 2);
  });

  test.each([0, -1, Number.NaN])('refuses the sample interval %d', (interval) => {
    expect(() => simulateSweep({ ...plan, recorder: { interval } })).toThrow(
      expect.objectContaining({ path: 'plan.recorder.interval' }),
    );
  });
});
