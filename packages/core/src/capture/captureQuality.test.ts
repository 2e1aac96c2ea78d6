import { describe, expect, test } from 'vitest';
import { defaultCriteria } from '../criteria.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { prepareSweep } from './captureQuality.js';
import { checkSweep } from './checkSweep.js';
import { noiseLevel } from './noiseLevel.js';
import { foundResolution } from './resolution.js';

const times = (count: number, interval: number) =>
  Float64Array.from({ length: count }, (_, i) => i * interval);

/** A slow ramp with noise. */
function ramp(count: number, noise: number, interval = 1e-3): Float64Array {
  const { normal } = randomNumbers(3);
  return times(count, interval).map((time) => time + noise * normal());
}

describe('noiseLevel', () => {
  test('finds the standard deviation on a moving signal', () => {
    expect(noiseLevel(ramp(20_000, 0.01), 1e-3, 0)).toBeCloseTo(0.01, 3);
  });

  test('is not fooled by steps, snaps or dropouts in a few samples', () => {
    const signal = ramp(20_000, 0.01);
    for (let i = 0; i < 20_000; i += 100) signal[i] = 0;
    expect(noiseLevel(signal, 1e-3, 0)).toBeLessThan(0.0125);
  });

  test('a noiseless recording has the noise of its rounding', () => {
    expect(noiseLevel(new Float64Array(100), 1e-3, 0.012)).toBeCloseTo(0.012 / Math.sqrt(12), 12);
  });

  test('samples at the end of the range say nothing of it, not even where all of them are', () => {
    const clipped = ramp(20_000, 0.01).map((volts) => Math.min(5, volts));
    expect(noiseLevel(clipped, 1e-3, 0)).toBeLessThan(0.006);
    expect(noiseLevel(clipped, 1e-3, 0, undefined, { high: 5 })).toBeCloseTo(0.01, 3);
    expect(noiseLevel(new Float64Array(100), 1e-3, 0, undefined, { low: 0 })).toBe(0);
  });

  test('finds filtered noise that neighbouring samples hide', () => {
    const { normal } = randomNumbers(4);
    let level = 0;
    const smooth = Float64Array.from({ length: 50_000 }, () => {
      level += 0.05 * (normal() - level);
      return level;
    });
    const sd = Math.sqrt(0.05 / 1.95);
    expect(noiseLevel(smooth, 1e-4, 0)).toBeGreaterThan(0.6 * sd);
  });
});

describe('foundResolution', () => {
  test('is the step of readings that repeat, 0 for readings that do not', () => {
    const rounded = ramp(5000, 0.01).map((volts) => Math.round(volts / 0.02) * 0.02);
    expect(foundResolution(rounded)).toBeCloseTo(0.02, 9);
    expect(foundResolution(ramp(5000, 0.01))).toBe(0);
    expect(foundResolution(new Float64Array(10))).toBe(0);
  });
});

describe('prepareSweep', () => {
  const prepare = (signal: Float64Array, interval = 1e-3) =>
    prepareSweep({ time: times(signal.length, interval), signal }, 4, {}, defaultCriteria).quality;

  test('measures interval, gap, duration and the shortest dropout', () => {
    const time = times(1000, 1e-3).map((at, i) => (i < 500 ? at : at + 0.05));
    const { quality } = prepareSweep({ time, signal: ramp(1000, 0.001) }, 4, {}, defaultCriteria);
    expect(quality.interval).toBeCloseTo(1e-3, 12);
    expect(quality.longestGap).toBeCloseTo(0.051, 12);
    expect(quality.duration).toBeCloseTo(1.049, 12);
    expect(quality.shortestDropout).toBeCloseTo(2e-3, 12);
  });

  test('the visible departure is set by what is largest', () => {
    expect(prepare(ramp(4000, 0.001))).toMatchObject({ visibleSetBy: 'span', visible: 0.06 });
    const noisy = prepare(ramp(10_000, 0.05));
    expect(noisy.visibleSetBy).toBe('noise');
    // k = 5.03 for 10⁴ samples at half a percent, two-sided.
    expect(noisy.visible / noisy.noise).toBeCloseTo(5.03, 2);
    const coarse = ramp(4000, 0.005).map((volts) => Math.round(volts / 0.1) * 0.1);
    expect(prepare(coarse)).toMatchObject({ visibleSetBy: 'resolution' });
  });

  test.each([50, 60])('finds %d Hz ripple and its amplitude', (hertz) => {
    const signal = ramp(4000, 0.001).map(
      (volts, i) => volts + 0.1 * Math.sin(2 * Math.PI * hertz * i * 1e-3),
    );
    const { ripple, visibleSetBy, noise } = prepare(signal);
    expect(ripple?.hertz).toBe(hertz);
    expect(ripple?.volts).toBeCloseTo(0.1, 1);
    expect(visibleSetBy).toBe('ripple');
    expect(noise).toBeLessThan(0.02);
  });

  test('bins keep the extremes of fast recordings', () => {
    const signal = new Float64Array(10_000);
    signal[5005] = 3;
    const { bins } = prepareSweep({ time: times(10_000, 1e-5), signal }, 4, {}, defaultCriteria);
    expect(bins.samplesPerBin).toBe(25);
    expect(Math.max(...bins.high)).toBe(3);
    expect(Math.max(...bins.mean)).toBeCloseTo(0.12, 12);
  });
});

describe('checkSweep', () => {
  const good = { time: times(4, 1), signal: new Float64Array(4) };

  test('lets a sweep pass', () => {
    expect(() => checkSweep(good)).not.toThrow();
  });

  test.each([
    [undefined, 'missing', 'sweep'],
    [{ time: good.time }, 'missing', 'sweep.signal'],
    [{ ...good, signal: new Float64Array(3) }, 'length-mismatch', 'sweep.signal'],
    [{ ...good, supply: new Float64Array(3) }, 'length-mismatch', 'sweep.supply'],
    [{ time: times(1, 1), signal: new Float64Array(1) }, 'too-few-samples', 'sweep.time'],
    [{ ...good, signal: Float64Array.of(1, 2, Number.NaN, 4) }, 'not-finite', 'sweep.signal[2]'],
    [{ ...good, signal: Float64Array.of(1, 2, 1e300, 4) }, 'out-of-range', 'sweep.signal[2]'],
    [
      { ...good, stretches: [{ kind: 'bent', start: 0, end: 1 }] },
      'unknown-choice',
      'sweep.stretches[0].kind',
    ],
    [
      { ...good, stretches: [{ kind: 'rest', start: 2, end: 1 }] },
      'out-of-range',
      'sweep.stretches[0].end',
    ],
    [{ ...good, time: new Float64Array(4) }, 'no-duration', 'sweep.time'],
  ])('refuses what is no sweep (%#)', (sweep, code, path) => {
    expect(() => checkSweep(sweep as never)).toThrow(
      expect.objectContaining({ name: 'InputError', code, path }),
    );
  });
});
