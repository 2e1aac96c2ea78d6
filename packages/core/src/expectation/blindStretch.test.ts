import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { circuit as anyCircuit } from '../../../../tests/properties/circuits.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { blindStretch } from './blindStretch.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000 },
  load: { pullDown: 5000 },
};
const onLoad = (load: Circuit['load']): Circuit => ({ ...bench, load });

describe('blindStretch', () => {
  test('a pull-down is blind from closed up to where the loaded output reaches what is visible', () => {
    // x / (1 + x(1 − x)) = 0.1 by the quadratic formula.
    const border = (-0.9 + Math.sqrt(0.9 ** 2 + 4 * 0.1 * 0.1)) / 0.2;
    const { kind, stretches } = blindStretch(bench, 0.5);
    expect(kind).toBe('at-rest-level');
    expect(stretches).toEqual([[0, expect.closeTo(border, 10)]]);
  });

  test('a pull-up to the sensor’s supply is blind just as far below open', () => {
    const down = blindStretch(bench, 0.5).stretches[0]!;
    const up = blindStretch(onLoad({ pullUp: { ohms: 5000, from: 'sensor' } }), 0.5).stretches;
    expect(up).toEqual([[expect.closeTo(1 - down[1], 10), 1]]);
  });

  test('a falling sensor is blind at open on a pull-down, and a divider inside its travel', () => {
    const falling = { ...bench, sensor: { track: 5000, closedPosition: 1, openPosition: 0 } };
    expect(blindStretch(falling, 0.5).stretches[0]![1]).toBe(1);
    const divider = onLoad({ pullDown: 10e6, pullUp: { ohms: 10e6, volts: 5 } });
    const { stretches } = blindStretch(divider, 0.05);
    expect(stretches).toEqual([[expect.closeTo(0.49, 4), expect.closeTo(0.51, 4)]]);
  });

  test('nowhere, everywhere, and floating are told apart', () => {
    const wide = { ...bench, sensor: { track: 5000, closedPosition: 0.2 } };
    expect(blindStretch(wide, 0.5).stretches).toEqual([]);
    expect(blindStretch(bench, 6)).toEqual({
      kind: 'at-rest-level',
      restLevel: 0,
      stretches: [[0, 1]],
    });
    expect(blindStretch(onLoad({}), 0.5)).toEqual({ kind: 'floating', stretches: [[0, 1]] });
  });

  test('on any hook-up a lifted wiper shows outside the stretches and not inside', () => {
    const places = Array.from({ length: 41 }, (_, i) => i / 40);
    fc.assert(
      fc.property(anyCircuit, fc.double({ min: 0.01, max: 3, noNaN: true }), (circuit, visible) => {
        const outputs = places.map((at) => operatingPoint(circuit, at).output);
        fc.pre(outputs.every((output) => typeof output === 'number'));
        const found = blindStretch(circuit, visible);
        if (found.kind === 'floating') return;
        places.forEach((at, i) => {
          const excess = Math.abs((outputs[i] as number) - found.restLevel) - visible;
          if (Math.abs(excess) < 1e-9) return;
          const inside = found.stretches.some(([from, to]) => at >= from && at <= to);
          const atBorder = found.stretches.flat().some((border) => Math.abs(border - at) < 1e-9);
          if (!atBorder) expect(inside).toBe(excess < 0);
        });
      }),
      { numRuns: 200 * soak },
    );
  });

  test.each([
    [undefined, 1, 'circuit'],
    [bench, 0, 'visible'],
    [bench, Number.NaN, 'visible'],
  ])('refuses wrong input (%#) by path', (circuit, visible, path) => {
    expect(() => blindStretch(circuit as Circuit, visible)).toThrow(
      expect.objectContaining({ name: 'InputError', path }),
    );
  });
});
