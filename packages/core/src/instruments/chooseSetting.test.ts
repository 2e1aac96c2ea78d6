import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { chooseSetting } from './chooseSetting.js';
import type { Oscilloscope } from './instrument.js';
import { rankInstruments } from './rankInstruments.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 1e6 },
};
const wish = { width: 0.01, travelTime: 2 };

describe('a setting', () => {
  test('shows surely what it was chosen for', () => {
    const { interval, timePerDivision, memory, voltsPerDivision } = chooseSetting(circuit, wish);
    const scope: Oscilloscope = {
      kind: 'oscilloscope',
      name: 'Oscilloscope',
      inputOhms: 10e6,
      range: { low: 0, high: 8 * voltsPerDivision },
      bits: 8,
      record: 10 * timePerDivision,
      memory,
      fastest: 1e-9,
    };
    expect(scope.record / memory).toBeLessThanOrEqual(interval);
    const fault = { travel: 0.4, width: wish.width, speed: 1 / wish.travelTime, passes: 1 };
    const [ranked] = rankInstruments([scope], circuit, fault);
    expect(ranked).toMatchObject({ reason: 'surely' });
    expect(ranked!.sight.chance).toBe(1);
    const [slow] = rankInstruments([{ ...scope, memory: 100 }], circuit, fault);
    expect(slow!.sight.chance).toBeLessThan(1);
  });

  test('triggers between rest level and sound readings, whichever way the load pulls', () => {
    const { trigger } = chooseSetting(circuit, wish);
    expect(trigger).toMatchObject({ kind: 'level', slope: 'falling' });
    if (trigger.kind !== 'level') throw new Error('a level was wanted');
    expect(trigger.volts).toBeCloseTo(0.2, 1);
    const up = { ...circuit, load: { pullUp: { ohms: 1e6, volts: 5 } } };
    expect(chooseSetting(up, wish).trigger).toMatchObject({ kind: 'level', slope: 'rising' });
    const middle = { ...circuit, load: { pullDown: 1e6, pullUp: { ohms: 1e6, volts: 5 } } };
    expect(chooseSetting(middle, wish).trigger).toEqual({ kind: 'pulse', shorterThan: 0.2 });
  });

  test('takes a ×10 probe where a megohm would tell', () => {
    expect(chooseSetting(circuit, wish).probe).toBe(1);
    const high = { ...circuit, limiter: 0, sensor: { ...circuit.sensor, track: 100e3 } };
    expect(chooseSetting(high, wish).probe).toBe(10);
  });

  test.each([
    [2, 0.5],
    [0.8, 0.1],
    [1, 0.2],
    [16, 2],
  ])('a stroke of %d s takes %d s per division', (travelTime, division) => {
    expect(chooseSetting(circuit, { ...wish, travelTime }).timePerDivision).toBe(division);
  });

  test('refuses what is no wish', () => {
    expect(() => chooseSetting(circuit, { ...wish, width: 0 })).toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'wish.width' }),
    );
  });
});
