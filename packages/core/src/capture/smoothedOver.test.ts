import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { runningMedian } from '../statistics/runningMedian.js';
import { smoothedOver } from './smoothedOver.js';

const count = 10_000;
const interval = 1e-3;

/** White noise of one volt. */
function white(seed: number): Float64Array {
  const { normal } = randomNumbers(seed);
  return Float64Array.from({ length: count }, normal);
}

/** A mean over so many samples. */
function averaged(signal: Float64Array, samples: number): Float64Array {
  return Float64Array.from({ length: signal.length - samples }, (_, i) => {
    let sum = 0;
    for (let k = 0; k < samples; k++) sum += signal[i + k]!;
    return sum / samples;
  });
}

const rounded = (signal: Float64Array, step: number): Float64Array =>
  signal.map((volts) => Math.round(volts / step) * step);

const seeds = [1, 2, 3, 4, 5];

describe('smoothedOver', () => {
  test.each([8, 20, 50])('finds a mean over %d samples', (samples) => {
    for (const seed of seeds) {
      const over = smoothedOver(averaged(white(seed), samples), interval, 0) / interval;
      // Its longest reaches are 32 samples, of which half is sure.
      expect(over).toBeGreaterThanOrEqual(Math.min(0.5 * samples, 16));
      expect(over).toBeLessThan(1.6 * samples);
    }
  });

  test('finds a median of 50 ms, also where it is rounded to steps that the noise goes over', () => {
    for (const seed of seeds) {
      const smooth = runningMedian(white(seed), 25);
      expect(smoothedOver(smooth, interval, 0)).toBeGreaterThan(7.5e-3);
      expect(smoothedOver(rounded(smooth, 0.05), interval, 0.05)).toBeGreaterThan(7.5e-3);
    }
  });

  test('takes nothing else for smoothed: noise, rounding, a mean of few, hum, tremor, a slow drift', () => {
    const step = 0.01;
    const made: ((noise: Float64Array) => Float64Array)[] = [
      (noise) => noise,
      ...[0.5, 2, 4, 20].map((steps) => (noise: Float64Array) => rounded(noise, steps)),
      ...[2, 3, 4].map((samples) => (noise: Float64Array) => averaged(noise, samples)),
      ...[50, 60].flatMap((hertz) =>
        [0.01, 0.1, 1].map(
          (scatter) => (noise: Float64Array) =>
            noise.map((one, i) => scatter * one + Math.sin(2 * Math.PI * hertz * i * interval)),
        ),
      ),
      (noise) => noise.map((one, i) => 0.1 * one + Math.sin(2 * Math.PI * 9 * i * interval)),
      (noise) =>
        rounded(
          noise.map((one, i) => 0.1 * step * one + i * 0.02 * step),
          step,
        ),
    ];
    for (const [at, make] of made.entries())
      for (const seed of seeds)
        for (const resolution of [0, step])
          expect(smoothedOver(make(white(seed)), interval, resolution), `${at}`).toBeLessThan(
            6 * interval,
          );
  });

  test('of too few samples nothing is told', () => {
    expect(smoothedOver(white(1).subarray(0, 500), interval, 0)).toBe(0);
    expect(smoothedOver(averaged(white(1), 20), 0.01, 0)).toBe(0);
  });
});
