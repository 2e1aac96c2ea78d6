import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { ohms as anyOhms } from '../../../../tests/properties/circuits.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { dirtEffect } from '../expectation/dirtEffect.js';
import { preferredValue } from '../quantity/preferredValue.js';
import {
  type BenchLoad,
  type BenchLoadWay,
  type BenchLoadWish,
  chooseBenchLoad,
} from './chooseBenchLoad.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 10e6 },
};
const plain: Circuit = { ...bench, limiter: 0, load: {} };
const ways = (circuit: Circuit, wish: BenchLoadWish) => {
  const choice = chooseBenchLoad(circuit, wish);
  if (choice.kind === 'none-needed') throw new Error(choice.kind);
  return choice.ways;
};
const possible = (circuit: Circuit, wish: BenchLoadWish, way: BenchLoadWay): BenchLoad => {
  const load = ways(circuit, wish)[way];
  if (load.kind === 'impossible') throw new Error(load.binding);
  return load;
};

describe('chooseBenchLoad', () => {
  test('at the open end of a plain sensor the pull-down is R·D: the border is known in closed form', () => {
    // There the sensor has no resistance: change = V·D / (R + D), so R = D·(V / change − 1).
    const wish = { travels: [1], dirt: 10e3, visible: 0.5 };
    const load = possible(plain, wish, 'pull-down');
    expect(load.largest).toBeCloseTo(90e3, 3);
    expect(load.ohms).toBe(82e3);
    expect(load.change).toBeCloseTo((5 * 10) / 92, 9);
    expect(chooseBenchLoad(plain, wish)).toMatchObject({
      use: 'pull-down',
      ways: { 'pull-up': { kind: 'impossible', binding: 'visible' } },
    });
  });

  test('just above closed a rising sensor is near a pull-down’s rest level: a pull-up shows far more', () => {
    const wish = { travels: [0.03], dirt: 10e3, visible: 0.25 };
    expect(chooseBenchLoad(bench, wish)).toMatchObject({ kind: 'chosen', use: 'pull-up' });
    const { 'pull-down': down, 'pull-up': up } = ways(bench, wish);
    if (down.kind !== 'impossible' || up.kind !== 'possible') throw new Error('must differ');
    expect(down.binding).toBe('visible');
    const most = dirtEffect({ ...bench, load: { pullDown: down.ohms } }, 0.03, 10e3).dirty;
    expect(down.value).toBeCloseTo(most.kind === 'change' ? Math.abs(most.volts) : 0, 3);
    const same = dirtEffect(
      { ...bench, load: { pullDown: 10e6, pullUp: { ohms: down.ohms, from: 'sensor' } } },
      0.03,
      10e3,
    ).dirty;
    expect(same.kind === 'change' && same.volts).toBeGreaterThan(10 * down.value!);
  });

  test('near both stops at once only one recording with each shows it', () => {
    const wish = { travels: [0.01, 0.99], dirt: 10e3, visible: 0.2 };
    expect(chooseBenchLoad(bench, wish)).toMatchObject({ kind: 'chosen', use: 'one-with-each' });
    const each = possible(bench, wish, 'one-with-each');
    expect(each.loads.map((load) => Boolean(load.pullUp))).toEqual([false, true]);
    expect(each.change).toBeGreaterThanOrEqual(0.2);
  });

  test('a limit that the load breaks is named, with its value', () => {
    const wish = { travels: [0.5], dirt: 1e3, visible: 0.1 };
    const load = possible(bench, wish, 'pull-down');
    const tight = { wiperCurrent: load.wiperCurrent! / 2, loadingError: load.loadingError / 1.5 };
    expect(ways(bench, { ...wish, ...tight })['pull-down']).toEqual({
      kind: 'impossible',
      binding: 'wiper-current',
      ohms: load.ohms,
      value: load.wiperCurrent,
      limit: tight.wiperCurrent,
    });
    const { loadingError } = tight;
    expect(ways(bench, { ...wish, loadingError })['pull-down']).toMatchObject({
      binding: 'loading-error',
      value: load.loadingError,
    });
    const kept = { wiperCurrent: load.wiperCurrent!, loadingError: load.loadingError };
    expect(possible(bench, { ...wish, ...kept }, 'pull-down')).toEqual(load);
  });

  test('a hook-up that shows the dirt as it is needs none; one that lets a lifted wiper float does', () => {
    const lifted = { travels: [0.5], dirt: Number.POSITIVE_INFINITY, visible: 0.5 };
    expect(chooseBenchLoad(bench, lifted)).toMatchObject({ kind: 'none-needed' });
    expect(chooseBenchLoad(plain, lifted)).toMatchObject({ kind: 'chosen' });
  });

  test('more than any load can show is impossible every way', () => {
    const choice = chooseBenchLoad(bench, { travels: [0.5], dirt: 10, visible: 1 });
    expect(choice.kind).toBe('impossible');
  });

  test('a pull-up of its own voltage, and a series of its own, are used', () => {
    const wish = {
      travels: [0.1],
      dirt: 10e3,
      visible: 0.2,
      pullUpVolts: 12,
      series: 'E6',
    } as const;
    const load = possible(bench, wish, 'pull-up');
    expect(load.loads).toEqual([{ pullDown: 10e6, pullUp: { ohms: load.ohms, volts: 12 } }]);
    expect(preferredValue(load.largest, 'E6', 'down')).toBe(load.ohms);
  });

  test('the load chosen shows the dirt within its limits, and the next weaker one does not show it', () => {
    const wishes = fc.record({
      travels: fc.tuple(fc.double({ min: 0, max: 1, noNaN: true })),
      dirt: anyOhms(100, 1e6),
      visible: fc.double({ min: 0.01, max: 2, noNaN: true }),
      wiperCurrent: anyOhms(1e-5, 1e-2),
    });
    fc.assert(
      fc.property(anyOhms(500, 50e3), wishes, (track, wish) => {
        const circuit = { ...bench, sensor: { track } };
        const choice = chooseBenchLoad(circuit, wish);
        const load = choice.kind !== 'none-needed' && choice.ways['pull-down'];
        if (!load || load.kind === 'impossible' || load.largest > 0.99e9) return;
        const changeWith = (ohms: number) => {
          const pullDown = 1 / (1 / ohms + 1e-7);
          const { dirty } = dirtEffect(
            { ...bench, sensor: { track }, load: { pullDown } },
            wish.travels[0],
            wish.dirt,
          );
          return dirty.kind === 'change' ? Math.abs(dirty.volts) : 0;
        };
        expect(changeWith(load.ohms)).toBeGreaterThanOrEqual(wish.visible * (1 - 1e-9));
        expect(changeWith(load.largest * 1.001)).toBeLessThan(wish.visible);
        for (const position of [0, 0.25, 0.5, 0.75, 1]) {
          const { parts } = operatingPoint({ ...circuit, load: load.loads[0]! }, position);
          expect(parts.contact!.amps).toBeLessThanOrEqual(wish.wiperCurrent * (1 + 1e-9));
        }
      }),
      { numRuns: 20 * soak },
    );
  });

  test.each([
    [{ travels: [] }, 'wish.travels'],
    [{ travels: [2] }, 'wish.travels[0]'],
    [{ dirt: 0 }, 'wish.dirt'],
    [{ visible: -1 }, 'wish.visible'],
    [{ wiperCurrent: 0 }, 'wish.wiperCurrent'],
    [{ loadingError: 2 }, 'wish.loadingError'],
    [{ pullUpVolts: -1 }, 'wish.pullUpVolts'],
    [{ series: 'E5' }, 'wish.series'],
    [{ serie: 'E24' }, 'wish.serie'],
  ])('refuses the wish %j by path', (change, path) => {
    const wish = { travels: [0.5], dirt: 1e3, visible: 0.1, ...change } as BenchLoadWish;
    expect(() => chooseBenchLoad(bench, wish)).toThrow(expect.objectContaining({ path }));
  });

  test('refuses a hook-up that has a pull-up already', () => {
    const pulled = { ...bench, load: { pullUp: { ohms: 1e4, volts: 5 } } };
    expect(() => chooseBenchLoad(pulled, { travels: [0.5], dirt: 1e3, visible: 0.1 })).toThrow(
      expect.objectContaining({ code: 'has-pull-up', path: 'circuit.load.pullUp' }),
    );
  });
});
