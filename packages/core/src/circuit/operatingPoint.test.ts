import { describe, expect, test } from 'vitest';
import type { Circuit } from './circuit.js';
import { operatingPoint } from './operatingPoint.js';

const plain: Circuit = {
  source: { volts: 6 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: {},
};

describe('operatingPoint', () => {
  test('an unloaded sensor behind a limiter divides the voltage by its resistances', () => {
    const { output, parts, nodes } = operatingPoint(plain, 0.5);
    expect(output).toBeCloseTo(2.5, 14);
    expect(nodes.top).toBeCloseTo(5, 14);
    expect(parts.limiter?.amps).toBeCloseTo(1e-3, 17);
    expect(parts.contact).toEqual({ amps: 0, watts: 0 });
    expect(parts.source?.watts).toBeCloseTo(6e-3, 16);
  });

  test('the heat next to the wiper counts per length of the whole track', () => {
    const { trackHeat, parts } = operatingPoint(plain, 0.25);
    expect(trackHeat.below).toBeCloseTo(5e-3, 15);
    expect(parts.trackBelow?.watts).toBeCloseTo(1.25e-3, 15);
  });

  test('a pull-down bends the output down: 10 kΩ at mid with 5 kΩ to common', () => {
    const circuit: Circuit = {
      source: { volts: 10 },
      limiter: 0,
      sensor: { track: 10_000 },
      load: { pullDown: 5000 },
    };
    expect(operatingPoint(circuit, 0.5).output).toBeCloseTo(10 / 3, 13);
  });

  test('a lifted wiper goes to where the load pulls it, and floats without one', () => {
    const lifted = { ...plain, sensor: { track: 5000, contact: Number.POSITIVE_INFINITY } };
    expect(operatingPoint({ ...lifted, load: { pullDown: 1e6 } }, 0.5).output).toBe(0);
    const up = { pullUp: { ohms: 1e4, volts: 5 } };
    expect(operatingPoint({ ...lifted, load: up }, 0.5).output).toBe(5);
    expect(operatingPoint(lifted, 0.5).output).toEqual({
      kind: 'floating',
      reason: 'no-path-to-common',
    });
  });

  test('a broken ground lead lets the whole sensor rise to the source', () => {
    const broken: Circuit = { ...plain, leads: { ground: Number.POSITIVE_INFINITY } };
    expect(operatingPoint(broken, 0.3).output).toBe(6);
    const metered = { ...broken, load: { pullDown: 10e6 } };
    expect(operatingPoint(metered, 0.3).output).toBeCloseTo((6 * 10e6) / (10e6 + 4500), 11);
  });

  test('a source that reaches its current limit becomes a current source', () => {
    const limited: Circuit = {
      source: { volts: 5, currentLimit: 0.001 },
      limiter: 0,
      sensor: { track: 1000 },
      load: {},
    };
    const point = operatingPoint(limited, 1);
    expect(point.sourceState).toBe('constant-current');
    expect(point.output).toBeCloseTo(1, 14);
    expect(point.parts.source?.watts).toBeCloseTo(1e-3, 16);
    const dead: Circuit = { ...limited, sensor: { track: 0 } };
    expect(operatingPoint(dead, 1)).toMatchObject({ sourceState: 'constant-current', output: 0 });
  });

  test('an ideal source across 0 Ω has no solution and says so', () => {
    const dead: Circuit = { ...plain, limiter: 0, sensor: { track: 0 } };
    const { output, parts } = operatingPoint(dead, 0.5);
    expect(output).toEqual({ kind: 'undetermined', reason: 'circuit-without-solution' });
    expect(parts.source?.amps).toEqual({
      kind: 'unbounded',
      reason: 'sources-joined-without-resistance',
    });
  });

  test('the wiper at either end of a track that does not conduct still touches its terminal', () => {
    const cracked: Circuit = {
      ...plain,
      sensor: { track: Number.POSITIVE_INFINITY },
      load: { pullDown: 1e6 },
    };
    expect(operatingPoint(cracked, 0).output).toBe(0);
    expect(operatingPoint(cracked, 1).output).toBeCloseTo((6 * 1e6) / (1e6 + 1000), 12);
    expect(operatingPoint(cracked, 0.5).output).toBe(0);
  });

  test.each([
    [{ ...plain, limiter: -5 }, 'negative', 'circuit.limiter'],
    [{ ...plain, limiter: Number.NaN }, 'not-finite', 'circuit.limiter'],
    [{ ...plain, limiter: 1e-300 }, 'out-of-range', 'circuit.limiter'],
    [{ ...plain, limiter: '1k' }, 'not-finite', 'circuit.limiter'],
    [{ ...plain, source: undefined }, 'missing', 'circuit.source'],
    [{ ...plain, source: {} }, 'missing', 'circuit.source.volts'],
    [{ ...plain, source: { volts: -5 } }, 'negative', 'circuit.source.volts'],
    [{ ...plain, source: { volts: 5, currentLimit: 0 } }, 'zero', 'circuit.source.currentLimit'],
    [{ ...plain, sensor: {} }, 'missing', 'circuit.sensor.track'],
    [
      { ...plain, sensor: { track: 1, closedPosition: 2 } },
      'out-of-range',
      'circuit.sensor.closedPosition',
    ],
    [{ ...plain, load: undefined }, 'missing', 'circuit.load'],
    [{ ...plain, load: { pullUp: { ohms: 1 } } }, 'missing', 'circuit.load.pullUp.volts'],
    [undefined, 'missing', 'circuit'],
  ])('refuses a wrong circuit (%#) by code and path', (circuit, code, path) => {
    expect(() => operatingPoint(circuit as Circuit, 0.5)).toThrow(
      expect.objectContaining({ name: 'InputError', code, path }),
    );
  });

  test.each([-0.1, 1.1, Number.NaN])('refuses the position %d', (position) => {
    expect(() => operatingPoint(plain, position)).toThrow(/position/);
  });
});
