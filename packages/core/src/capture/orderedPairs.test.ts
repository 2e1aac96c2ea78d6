import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { orderedPairs, pairTimes } from './orderedPairs.js';

/** Intervals of ten samples, of which the lowest and the highest are written, the lower first, under the interval's stamp. */
function asPairs(signal: (at: number) => number, intervals: number) {
  const time = new Float64Array(2 * intervals);
  const written = new Float64Array(2 * intervals);
  for (let i = 0; i < intervals; i++) {
    const all = Array.from({ length: 10 }, (_, k) => signal(i + k / 10));
    time.fill(i, 2 * i, 2 * i + 2);
    written[2 * i] = Math.min(...all);
    written[2 * i + 1] = Math.max(...all);
  }
  return { time, written };
}

describe('orderedPairs', () => {
  test('puts lowest and highest of an interval in the order in which they follow on', () => {
    const { time, written } = asPairs((at) => 40 - at, 40);
    const pairs = orderedPairs(time, written)!;
    const drops = [...pairs.signal].slice(2).map((volts, i) => pairs.signal[i + 1]! - volts);
    expect(Math.min(...drops)).toBeGreaterThan(0);
    expect(pairs.apart).toBeCloseTo(0.9, 6);
  });

  test('tells how far apart they are by what moves fast: noise widens what moves slowly', () => {
    const { normal } = randomNumbers(6);
    const slowThenFall = (at: number) => 2 * Math.min(at, 1000) - 50 * Math.max(0, at - 1000);
    const { time, written } = asPairs((at) => slowThenFall(at) + 0.5 * normal(), 1040);
    expect(Math.abs(orderedPairs(time, written)!.apart - 0.9)).toBeLessThan(0.015);
  });

  test('takes each movement for as much: a leap falls between two samples', () => {
    const { time, written } = asPairs((at) => 40 - at - (at > 20.45 ? 30 : 0), 40);
    expect(Math.abs(orderedPairs(time, written)!.apart - 0.9)).toBeLessThan(0.01);
  });

  test('leaves other rows alone', () => {
    const time = Float64Array.from({ length: 40 }, (_, i) => i);
    expect(orderedPairs(time, time)).toBeUndefined();
  });

  test('leaves rows alone that were sampled one after the other under coarse stamps', () => {
    const time = Float64Array.from({ length: 4000 }, (_, i) => Math.floor(i / 2));
    const slowThenQuick = time.map((_, i) =>
      i < 3900 ? Math.floor(i / 20) : 195 - 2 * (i - 3900),
    );
    expect(orderedPairs(time, slowThenQuick)).toBeUndefined();
  });

  test('orders the first pair by the one after it', () => {
    const { time, written } = asPairs((at) => 40 - at, 40);
    expect([...orderedPairs(time, written)!.signal].slice(0, 2)).toEqual([40, 39.1]);
  });
});

describe('pairTimes', () => {
  test('gives the samples of a fall the times at which they were taken', () => {
    const { time, written } = asPairs((at) => 1600 - at * at, 40);
    const { signal, apart } = orderedPairs(time, written)!;
    const spread = time.map((at, i) => at + (i % 2) / 2);
    const at = pairTimes(time, spread, apart);
    const misses = at.map((one, i) => Math.abs(one - Math.sqrt(1600 - signal[i]!))).slice(4);
    expect(Math.max(...misses)).toBeLessThan(0.01);
  });
});
