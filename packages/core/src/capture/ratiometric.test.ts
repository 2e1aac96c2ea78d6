import { describe, expect, test } from 'vitest';
import { ratiometric } from './ratiometric.js';

const expected = { source: 5, supply: 4 };
const time = Float64Array.from({ length: 101 }, (_, i) => i / 100);
const signal = time.map((at) => 0.4 + 3 * at);

describe('ratiometric', () => {
  test('a supply that sags with the signal leaves the ratio as it is', () => {
    const sag = time.map((at) => (at > 0.4 && at < 0.5 ? 0.6 : 1));
    const supply = sag.map((part) => 4 * part);
    const judged = ratiometric(
      { time, signal: signal.map((volts, i) => volts * sag[i]!), supply },
      expected,
      {},
    );
    expect(judged).toMatchObject({ supply: 'recorded', supplyLost: 0 });
    expect(judged.supplyStray).toBeCloseTo(0.4, 9);
    for (const [i, volts] of judged.sweep.signal.entries())
      expect(volts).toBeCloseTo(signal[i]!, 9);
  });

  test('samples without a supply are left out', () => {
    const supply = time.map((at) => (at > 0.4 && at < 0.5 ? 0 : 4));
    const { sweep, supplyLost } = ratiometric({ time, signal, supply }, expected, {});
    expect(sweep.time).toHaveLength(92);
    expect(supplyLost).toBeCloseTo(0.09, 9);
  });

  test('readings of source and zero take out offset, gain and drift', () => {
    const before = { source: 5.1, zero: 0.02 };
    const after = { source: 5.2, zero: 0.04 };
    const shown = signal.map((volts, i) => {
      const zero = 0.02 + 0.02 * time[i]!;
      return zero + (volts / 5) * (5.1 + 0.1 * time[i]! - zero);
    });
    const judged = ratiometric({ time, signal: shown }, expected, {
      uncertainty: 1,
      before,
      after,
    });
    expect(judged.supply).toBe('read');
    expect(judged.uncertainty).toBeCloseTo(0.1 / Math.sqrt(12), 9);
    for (const [i, volts] of judged.sweep.signal.entries())
      expect(volts).toBeCloseTo(signal[i]!, 9);
  });

  test('without either the supply is assumed', () => {
    const sweep = { time, signal };
    expect(ratiometric(sweep, expected, { uncertainty: 0.01 })).toEqual({
      sweep,
      supply: 'assumed',
      uncertainty: 0.01,
    });
  });
});
