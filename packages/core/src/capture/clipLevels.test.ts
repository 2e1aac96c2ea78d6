import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { clipLevels } from './clipLevels.js';

describe('clipLevels', () => {
  const { normal } = randomNumbers(5);
  const step = 0.01;
  const resting = Float64Array.from(
    { length: 2000 },
    (_, i) => (i < 1000 ? 1 : 4) + 0.02 * normal(),
  ).map((volts) => Math.round(volts / step) * step);

  test('finds the end of the range at which samples pile up', () => {
    const clipped = resting.map((volts) => Math.min(4, volts + 0.03));
    expect(clipLevels(clipped, 0.02, step)).toEqual({ high: 4 });
    expect(
      clipLevels(
        clipped.map((volts) => -volts),
        0.02,
        step,
      ),
    ).toEqual({ low: -4 });
  });

  test('a level that noise takes there and back again reads right to within the noise', () => {
    const touching = resting.map((volts) => Math.min(4, volts + 0.01));
    expect(clipLevels(touching, 0.02, step)).toEqual({});
  });

  test('with noise below half a step most of the samples must lie there', () => {
    const written = (volts: number): number => Math.round(volts / step) * step;
    const noisy = (rest: number) =>
      Float64Array.from({ length: 4000 }, (_, i) =>
        written((i < 2000 ? 1.005 : rest) + 0.004 * normal()),
      );
    expect(
      clipLevels(
        noisy(4.02).map((volts) => Math.min(4, volts)),
        0.004,
        step,
      ),
    ).toEqual({
      high: 4,
    });
    for (const within of [0, 0.2, 0.4, 0.6, 0.8])
      expect(clipLevels(noisy(4 + within * step), 0.004, step)).toEqual({});
  });

  test('a resting signal with noise has none, one without noise can’t be told', () => {
    expect(clipLevels(resting, 0.02, step)).toEqual({});
    expect(clipLevels(new Float64Array(100).fill(4), 0, step)).toEqual({});
    expect(clipLevels(new Float64Array(100).fill(4), 0, 0)).toEqual({});
  });
});
