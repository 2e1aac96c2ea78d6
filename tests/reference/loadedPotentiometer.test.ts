import { loadingErrors, operatingPoint } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

/** Output of a 1 V ideal source across the track, with the load from the wiper to the bottom end. */
function loadedOutput(position: number, trackOverLoad: number): number {
  const track = 10_000;
  const { output } = operatingPoint(
    {
      source: { volts: 1 },
      limiter: 0,
      sensor: { track },
      load: { pullDown: track / trackOverLoad },
    },
    position,
  );
  if (typeof output !== 'number') throw new Error('the output must be determined');
  return output;
}

const loadingError = (position: number, ratio: number): number =>
  position - loadedOutput(position, ratio);

/** Bracketed search for the place of the largest loading error. */
function worstPlace(ratio: number): number {
  let [low, high] = [0.5, 0.95];
  const golden = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-10) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (loadingError(left, ratio) < loadingError(right, ratio)) low = left;
    else high = right;
  }
  return (low + high) / 2;
}

/**
 * Source of the formula: I. E. Irodov, Problems in General Physics, problem 3.180 (second-hand copy), with
 * l = 1. Exact maxima of x²(1−x)m / (1 + m x(1−x)) computed in exact rationals for m = track / load.
 */
const maxima = [
  [0.001, 0.666691355281, 0.000148115234],
  [0.01, 0.666913306203, 0.001478197207],
  [0.05, 0.667894413781, 0.007326081503],
  [0.1, 0.669108669589, 0.014493331391],
  [0.2, 0.671497591894, 0.028373179654],
  [0.5, 0.678362825737, 0.066725559131],
  [1, 0.688892182534, 0.121585106872],
  [2, Math.SQRT1_2, (Math.SQRT2 - 1) / 2],
  [5, 0.746578505865, 0.362929818031],
  [10, 0.78633134332, 0.492939848199],
] as const;

describe('loaded potentiometer: largest loading error', () => {
  test.each(maxima)('track / load = %d', (ratio, place, error) => {
    expect(loadingError(place, ratio)).toBeCloseTo(error, 11);
    expect(worstPlace(ratio)).toBeCloseTo(place, 5);
    expect(loadingError(worstPlace(ratio), ratio)).toBeCloseTo(error, 11);
  });

  test.each(maxima)('loadingErrors at track / load = %d', (ratio, place, error) => {
    const { fromUnloaded, fromEndLine, rule } = loadingErrors({
      source: { volts: 1 },
      limiter: 0,
      sensor: { track: 10_000 },
      load: { pullDown: 10_000 / ratio },
    });
    expect(fromUnloaded.volts).toBeCloseTo(error, 11);
    expect(fromUnloaded.position).toBeCloseTo(place, 6);
    // With nothing but the track the loaded output meets the unloaded one at both ends: the two lines are one.
    expect(fromEndLine.volts).toBeCloseTo(error, 11);
    expect(rule!.volts).toBeCloseTo((4 / 27) * ratio, 12);
    expect(rule!.excess).toBeCloseTo(((4 / 27) * ratio) / error - 1, 6);
  });

  test('4/27 of track / load holds for small ratios only, and always says too much', () => {
    for (const [ratio, , error] of maxima) {
      const rule = (4 / 27) * ratio;
      expect(rule).toBeGreaterThan(error);
      expect(rule / error - 1).toBeLessThan(0.25 * ratio);
    }
    expect(((4 / 27) * 0.1) / 0.014493331391 - 1).toBeCloseTo(0.0222, 4);
    expect(((4 / 27) * 10) / 0.492939848199).toBeGreaterThan(3);
  });

  /** Source: rclab.de, "Analogrechner", page on the loading of potentiometers: bounds for a 10 kΩ pot. */
  test.each([
    [200_000, 0.0075],
    [1_000_000, 0.0015],
    [20_000, 0.075],
  ])('a 10 kΩ pot into %d Ω errs by less than the published bound', (load, bound) => {
    const error = loadingError(worstPlace(10_000 / load), 10_000 / load);
    expect(error).toBeLessThan(bound);
    expect(error).toBeGreaterThan(0.88 * bound);
  });

  /** Source: a worked answer on electronics.stackexchange.com, question 231488 (second-hand copy). */
  test('a 10 kΩ pot at its middle on 10 V falls from 5 V to 3.333 V under 5 kΩ', () => {
    expect(10 * loadedOutput(0.5, 10 / 5)).toBeCloseTo(3.333, 3);
  });

  /**
   * Source: exercise 3231383233383939 at askfilo: the load of a 1 kΩ pot that makes the error 0.1 %. Only the question is
   * published; the loads are computed here from the formula above, of the supply and of the unloaded reading.
   */
  test.each([
    [0.2, 31_840, 159_840],
    [0.67, 147_915.9, 220_878.9],
  ])('a 1 kΩ pot errs by a thousandth at x = %d', (place, ofSupply, ofReading) => {
    expect(loadingError(place, 1000 / ofSupply)).toBeCloseTo(0.001, 9);
    expect(loadingError(place, 1000 / ofReading) / place).toBeCloseTo(0.001, 9);
  });

  /** Source: getwiringdiagram 62753, figure 3.7 (second-hand): a second load, from the wiper to the supply end. */
  test('an equal load to the supply end takes the error away at the middle', () => {
    const { output } = operatingPoint(
      {
        source: { volts: 1 },
        limiter: 0,
        sensor: { track: 10_000 },
        load: { pullDown: 10_000, pullUp: { ohms: 10_000, from: 'source' } },
      },
      0.5,
    );
    expect(output).toBeCloseTo(0.5, 14);
  });
});
