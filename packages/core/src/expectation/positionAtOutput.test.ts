import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import {
  circuit as anyCircuit,
  position as anyPosition,
} from '../../../../tests/properties/circuits.js';
import type { Circuit } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { positionAtOutput } from './positionAtOutput.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000 },
  load: { pullDown: 20e3 },
};
/** A pull-up to a voltage above the source: the output has its highest value inside the track. */
const bent: Circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 20e3 },
  load: { pullUp: { ohms: 2000, volts: 12 } },
};

const outputAt = (circuit: Circuit, position: number) =>
  operatingPoint(circuit, position).output as number;

describe('positionAtOutput', () => {
  test('undoes the operating point on any hook-up: the place is found, or is one of those found', () => {
    fc.assert(
      fc.property(anyCircuit, anyPosition, (circuit, position) => {
        let volts: unknown;
        for (const at of [0, 1e-4, 0.3, 0.7, 1, position]) {
          volts = operatingPoint(circuit, at).output;
          fc.pre(typeof volts === 'number');
        }
        const found = positionAtOutput(circuit, { volts: volts as number });
        if (found.kind === 'insensitive') return;
        expect(found.kind).not.toBe('impossible');
        const places =
          found.kind === 'position'
            ? [found.position]
            : (found as { positions: readonly number[] }).positions;
        for (const place of places) {
          // No nearer than a rounding of the place itself allows.
          const beside = [Math.max(0, place - 2 ** -52), Math.min(1, place + 2 ** -52)] as const;
          const step = Math.abs(outputAt(circuit, beside[1]) - outputAt(circuit, beside[0]));
          expect(Math.abs(outputAt(circuit, place) - (volts as number))).toBeLessThanOrEqual(
            1e-12 * Math.max(1, Math.abs(volts as number)) + step,
          );
        }
      }),
      { numRuns: 500 * soak },
    );
  });

  test('to 1e-9 of the track on a usual bench', () => {
    for (const position of [0, 1e-6, 0.1, 0.5, 0.77, 1 - 1e-6, 1]) {
      const found = positionAtOutput(bench, { volts: outputAt(bench, position) });
      expect(found.kind === 'position' && found.position).toBeCloseTo(position, 9);
    }
  });

  test('the uncertainty of the reading becomes that of the place', () => {
    const found = positionAtOutput(bench, { volts: 2, uncertainty: 0.05 });
    if (found.kind !== 'position') throw new Error(found.kind);
    expect(outputAt(bench, found.low)).toBeCloseTo(1.95, 9);
    expect(outputAt(bench, found.high)).toBeCloseTo(2.05, 9);
  });

  test('a reading just beyond an end is that end if its uncertainty allows, else impossible', () => {
    const highest = outputAt(bench, 1);
    const found = positionAtOutput(bench, { volts: highest + 0.01, uncertainty: 0.02 });
    expect(found).toMatchObject({ kind: 'position', position: 1, high: 1 });
    expect(found.kind === 'position' && outputAt(bench, found.low)).toBeCloseTo(highest - 0.01, 9);
    expect(positionAtOutput(bench, { volts: highest + 0.01 })).toEqual({
      kind: 'impossible',
      lowest: 0,
      highest,
    });
  });

  test('a dead source and a pull-up: the output rises and falls again, so two places fit', () => {
    const falling: Circuit = {
      ...bench,
      source: { volts: 0 },
      load: { pullUp: { ohms: 1e4, volts: 5 } },
    };
    const found = positionAtOutput(falling, { volts: outputAt(falling, 0.9) });
    expect(found.kind).toBe('ambiguous');
  });

  test('two places with the same output are both named', () => {
    const highest = Math.max(...Array.from({ length: 1001 }, (_, i) => outputAt(bent, i / 1000)));
    const volts = (highest + outputAt(bent, 1)) / 2;
    const found = positionAtOutput(bent, { volts });
    if (found.kind !== 'ambiguous') throw new Error(found.kind);
    expect(found.positions).toHaveLength(2);
    for (const place of found.positions) expect(outputAt(bent, place)).toBeCloseTo(volts, 12);
    expect(positionAtOutput(bent, { volts: highest + 0.01 }).kind).toBe('impossible');
    expect(positionAtOutput(bent, { volts: 1 }).kind).toBe('position');
  });

  test('a source at its current limit over part of the travel', () => {
    const limited: Circuit = {
      source: { volts: 5, currentLimit: 1.02e-3 },
      limiter: 1000,
      sensor: { track: 4000 },
      load: { pullDown: 20e3 },
    };
    expect(operatingPoint(limited, 0).sourceState).toBe('constant-voltage');
    expect(operatingPoint(limited, 1).sourceState).toBe('constant-current');
    for (const position of [0.05, 0.3, 0.5, 0.9, 1]) {
      const found = positionAtOutput(limited, { volts: outputAt(limited, position) });
      expect(found.kind === 'position' && found.position).toBeCloseTo(position, 9);
    }
  });

  test('near the turning point the uncertainty reaches over it', () => {
    const volts = outputAt(bent, 1) - 0.01;
    const found = positionAtOutput(bent, { volts, uncertainty: 0.05 });
    expect(found).toMatchObject({ kind: 'position', high: 1 });
  });

  test('a lifted wiper says nothing of the place', () => {
    const lifted = { ...bench, sensor: { track: 4000, contact: Number.POSITIVE_INFINITY } };
    expect(positionAtOutput(lifted, { volts: 0 })).toEqual({ kind: 'insensitive', volts: 0 });
    expect(positionAtOutput(lifted, { volts: 1 }).kind).toBe('impossible');
  });

  test.each([
    [{ volts: Number.NaN }, 'reading.volts'],
    [{ volts: 1, uncertainty: -1 }, 'reading.uncertainty'],
    [undefined, 'reading'],
    [{ volts: 1, uncertanty: 0.1 }, 'reading.uncertanty'],
  ])('refuses the reading %j', (reading, path) => {
    expect(() => positionAtOutput(bench, reading as { volts: number })).toThrow(
      expect.objectContaining({ name: 'InputError', path }),
    );
  });

  test('refuses a hook-up whose output floats', () => {
    const floating = {
      ...bench,
      sensor: { track: 4000, contact: Number.POSITIVE_INFINITY },
      load: {},
    };
    expect(() => positionAtOutput(floating, { volts: 1 })).toThrow(
      expect.objectContaining({ code: 'no-output' }),
    );
  });
});
