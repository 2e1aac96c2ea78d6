import { type Circuit, operatingPoint } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

/**
 * 28 V behind 4 Ω and 7 V behind 1 Ω meet at the signal: the source's leg through a wiper at the top end of a track that
 * conducts next to nothing, and the pull-up's leg. The load is the pull-down.
 */
function twoSources(load?: number): ReturnType<typeof operatingPoint> {
  const circuit: Circuit = {
    source: { volts: 28, ohms: 4 },
    limiter: 0,
    sensor: { track: 1e18 },
    load: {
      pullUp: { ohms: 1, volts: 7 },
      ...(load !== undefined && { pullDown: load }),
    },
  };
  return operatingPoint(circuit, 1);
}

const loadWatts = (load: number): unknown => twoSources(load).parts.pullDown?.watts;

/**
 * Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I (DC), ch. 10, "Thevenin's Theorem", "Norton's Theorem",
 * "Millman's Theorem" and "Maximum Power Transfer Theorem": one network of two sources through all four.
 */
describe('two sources, textbook example', () => {
  test('Thevenin: 11.2 V open, 0.8 Ω behind it', () => {
    expect(twoSources().output).toBeCloseTo(11.2, 12);
    expect(11.2 / (twoSources(0).parts.pullDown?.amps as number)).toBeCloseTo(0.8, 12);
  });

  test('Norton: 14 A into a short', () => {
    expect(twoSources(0).parts.pullDown?.amps).toBeCloseTo(14, 12);
    expect(twoSources(0).output).toBe(0);
  });

  test('Millman: all three legs are 571.43 mΩ side by side, and 14 A through them is the loaded voltage', () => {
    expect((twoSources(2).output as number) / 14).toBeCloseTo(0.571429, 6);
  });

  test('a 2 Ω load takes what the Thevenin source gives it', () => {
    expect(twoSources(2).output).toBeCloseTo((11.2 * 2) / 2.8, 12);
  });

  /** The first figure is published; the two beside it are computed here from 11.2 V and 0.8 Ω. */
  test('a load of 0.8 Ω takes the most, 39.2 W; a smaller and a larger one take less', () => {
    expect(loadWatts(0.8)).toBeCloseTo(39.2, 10);
    expect(loadWatts(0.5)).toBeCloseTo(37.1124, 4);
    expect(loadWatts(1.1)).toBeCloseTo(38.2227, 4);
  });
});
