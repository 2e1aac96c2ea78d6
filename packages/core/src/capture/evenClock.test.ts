import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { evenClock } from './evenClock.js';

const count = 1000;
const even = Float64Array.from({ length: count }, (_, i) => i * 2e-4);
const wave = (at: number) => Math.sin(2 * Math.PI * 25 * at);
const largestMiss = (time: Float64Array) =>
  time.reduce((most, at, i) => Math.max(most, Math.abs(at - time[0]! - even[i]!)), 0);

describe('evenClock', () => {
  test('leaves even stamps as they are', () => {
    expect(evenClock(even, even.map(wave))).toEqual({
      time: even,
      clock: 'stamped',
      moved: 0,
    });
  });

  test('spaces rows evenly that were sampled five to a millisecond and bear whole ones', () => {
    const stamps = even.map((at) => Math.floor(at * 1000 + 1e-9) / 1000);
    const { time, clock, moved } = evenClock(stamps, even.map(wave));
    expect(clock).toBe('even');
    expect(largestMiss(time)).toBeLessThan(1e-4);
    // The first and the last of five rows lie two intervals from their middle.
    expect(moved).toBeCloseTo(4e-4, 4);
  });

  test('spaces stamps evenly that were written late, where the signal is the smoother for it', () => {
    const stamps = even.map((at, i) => at + (i % 7 === 0 ? 1.5e-4 : 0));
    const { time, clock } = evenClock(stamps, even.map(wave));
    expect(clock).toBe('even');
    expect(largestMiss(time)).toBeLessThan(1e-4);
  });

  test('spaces stamps evenly that came late by chance, each no earlier than the one before', () => {
    const random = randomNumbers(3);
    let last = 0;
    const stamps = Float64Array.from({ length: 10_000 }, (_, i) => {
      const late = Math.min(4e-3, -1e-3 * Math.log(1 - random.uniform()));
      last = Math.max(last, i * 1e-3 + late);
      return last;
    });
    expect(evenClock(stamps, stamps.map(wave)).clock).toBe('even');
  });

  /** Stamps up to 4 ms late, each no earlier than the one before. */
  const late = (interval: number, rows: number, from = 0): Float64Array => {
    const random = randomNumbers(4);
    let last = 0;
    return Float64Array.from({ length: rows }, (_, i) => {
      const by = Math.min(4e-3, -1e-3 * Math.log(1 - random.uniform()));
      last = Math.max(last, from + i * interval + by);
      return last;
    });
  };

  test('spaces stamps evenly that came so late that nine of ten rows bear the stamp before', () => {
    const stamps = late(1e-4, 20_000);
    const { time, clock } = evenClock(stamps, stamps.map(wave));
    expect(clock).toBe('even');
    expect(time[10_000]! - time[9000]!).toBeCloseTo(0.1, 4);
  });

  test('lets the clock tick on from anywhere after a pause', () => {
    const stamps = Float64Array.from([...late(2e-4, 5000), ...late(2e-4, 5000, 1.5)]);
    const { time, clock } = evenClock(stamps, stamps.map(wave));
    expect(clock).toBe('even');
    expect(time[1000]! - time[0]!).toBeCloseTo(0.2, 4);
    expect(time[5000]! - time[4999]!).toBeCloseTo(0.5, 2);
  });

  test('keeps the stamps where a stretch of them lies aside', () => {
    const stamps = Float64Array.from({ length: 4000 }, (_, i) =>
      i < 1024 || i >= 1077 ? i * 1e-3 : Math.min(1.0765, i * 1e-3 + 8e-3),
    );
    expect(evenClock(stamps, stamps.map(wave)).clock).toBe('stamped');
  });

  test('keeps the stamps of samples that were taken unevenly', () => {
    const stamps = even.map((at, i) => at + (i % 3 === 0 ? 0.8e-4 : 0));
    expect(
      evenClock(
        stamps,
        stamps.map((at) => 10 * wave(at)),
      ).clock,
    ).toBe('stamped');
  });

  test('spreads rows between coarse stamps where samples are missing', () => {
    const kept = Array.from(even.keys()).filter((i) => i < 500 || i > 700);
    const at = Float64Array.from(kept, (i) => even[i]!);
    const stamps = at.map((one) => Math.floor(one * 100 + 1e-9) / 100);
    const { time, clock, moved } = evenClock(stamps, at.map(wave));
    expect(clock).toBe('spread');
    // The last of fifty rows.
    expect(moved).toBeCloseTo(49 * 2e-4, 6);
    const misses = time.map((one, i) => Math.abs(one - at[i]!));
    expect(Math.max(...misses.filter((_, i) => i < 400))).toBeLessThan(1e-3);
  });
});
