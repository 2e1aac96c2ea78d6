import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { circuit as anyCircuit, ohms as anyOhms } from '../../../../tests/properties/circuits.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { dirtEffect } from './dirtEffect.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000 },
  load: { pullDown: 10e6 },
};
const onLoad = (load: Circuit['load']): Circuit => ({ ...bench, load });
const volts = (circuit: Circuit, travel: number, ohms: number): number => {
  const { dirty } = dirtEffect(circuit, travel, ohms);
  if (dirty.kind === 'floating') throw new Error(dirty.kind);
  return dirty.volts;
};

describe('dirtEffect', () => {
  test('10 kΩ of dirt before 10 MΩ moves the reading by its thousandth and stays hidden', () => {
    expect(volts(bench, 1, 10e3)).toBeCloseTo(5 * (10e6 / (10e6 + 10e3) - 1), 12);
    expect(volts(bench, 1, 10e3) / 5).toBeCloseTo(-0.001, 5);
  });

  test('just above closed a pull-up shows far more than a pull-down of the same size', () => {
    const down = volts(onLoad({ pullDown: 10e3 }), 0.05, 10e3);
    const up = volts(onLoad({ pullUp: { ohms: 10e3, from: 'sensor' } }), 0.05, 10e3);
    expect(down).toBeLessThan(0);
    expect(up).toBeGreaterThan(10 * -down);
    const mirrored = volts(onLoad({ pullDown: 10e3 }), 0.95, 10e3);
    expect(mirrored).toBeCloseTo(-up, 12);
  });

  test('a lifted wiper goes to the rest level, or floats without a load', () => {
    const { clean, lifted } = dirtEffect(bench, 0.3, 0);
    expect(lifted).toEqual({ kind: 'change', volts: -clean, ofSpan: expect.closeTo(-0.3, 3) });
    expect(dirtEffect(bench, 0.3, Number.POSITIVE_INFINITY).dirty).toEqual(lifted);
    const bare = dirtEffect(onLoad({}), 0.3, 1000);
    expect(bare).toMatchObject({ dirty: { volts: 0 }, lifted: { kind: 'floating' } });
  });

  test('a sensor that does not move has no span to compare with', () => {
    const stuck = { ...bench, sensor: { track: 5000, closedPosition: 0.5, openPosition: 0.5 } };
    expect(dirtEffect(stuck, 0, 1e3).dirty).not.toHaveProperty('ofSpan');
  });

  test('more dirt moves the reading farther, never beyond the lifted wiper', () => {
    fc.assert(
      fc.property(anyCircuit, anyOhms(1, 1e6), (circuit, ohms) => {
        fc.pre(typeof operatingPoint(circuit, 0.4).output === 'number');
        fc.pre(typeof operatingPoint(circuit, 0).output === 'number');
        fc.pre(typeof operatingPoint(circuit, 1).output === 'number');
        const { clean, dirty, lifted } = dirtEffect(circuit, 0.4, ohms);
        if (dirty.kind === 'floating' || lifted.kind === 'floating') return;
        const rounding = 1e-12 * (1 + Math.abs(clean));
        const more = volts(circuit, 0.4, 2 * ohms);
        const way = Math.sign(lifted.volts);
        expect(way * dirty.volts).toBeGreaterThanOrEqual(-rounding);
        expect(way * more).toBeGreaterThanOrEqual(way * dirty.volts - rounding);
        expect(way * lifted.volts).toBeGreaterThanOrEqual(way * more - rounding);
      }),
      { numRuns: 200 * soak },
    );
  });

  test.each([
    [undefined, 0.5, 1, 'circuit'],
    [bench, 1.5, 1, 'travel'],
    [bench, 0.5, -1, 'ohms'],
  ])('refuses wrong input (%#) by path', (circuit, travel, ohms, path) => {
    expect(() => dirtEffect(circuit as Circuit, travel, ohms)).toThrow(
      expect.objectContaining({ name: 'InputError', path }),
    );
  });
});
