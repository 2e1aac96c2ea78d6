import { describe, expect, test } from 'vitest';
import { chanceOfSamples } from './chanceOfSamples.js';
import { sampleTimes } from './sampleTimes.js';

const even = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);

describe('sampleTimes', () => {
  test('measures interval, jitter, gaps and repeated stamps', () => {
    expect(sampleTimes(even)).toMatchObject({ gaps: 0, repeated: 0 });
    expect(sampleTimes(even).interval).toBeCloseTo(1e-3, 12);
    const late = even.map((at, i) => (i > 500 ? at + 0.02 : at));
    expect(sampleTimes(late)).toMatchObject({ gaps: 1 });
    expect(sampleTimes(late).longestGap).toBeCloseTo(0.021, 12);
    const jittered = even.map((at, i) => at + (i % 2) * 1e-4);
    expect(sampleTimes(jittered).jitter).toBeCloseTo(1e-4, 6);
    const twice = even.map((_, i) => Math.floor(i / 2) / 500);
    expect(sampleTimes(twice)).toMatchObject({ repeated: 500 });
  });
});

describe('chanceOfSamples', () => {
  test('is the share of a regular interval that the stretch covers', () => {
    expect(chanceOfSamples(even, 0.25e-3)).toBeCloseTo(0.25, 9);
    expect(chanceOfSamples(even, 1.5e-3)).toBe(1);
    expect(chanceOfSamples(even, 1.5e-3, 2)).toBeCloseTo(0.5, 9);
    expect(chanceOfSamples(even, 2e-3, 2)).toBeCloseTo(1, 9);
  });

  test('agrees with trying many beginnings in an irregular recording', () => {
    const time = even.map((at) => at + 0.3 * at * at + 2e-4 * Math.sin(1e4 * at));
    const length = 2.2e-3;
    let hits = 0;
    const end = time[time.length - 2]!;
    for (let k = 0; k < 20_000; k++) {
      const start = ((k + 0.5) / 20_000) * end;
      const inside = time.filter((at) => at >= start && at < start + length).length;
      if (inside >= 2) hits++;
    }
    expect(chanceOfSamples(time, length, 2)).toBeCloseTo(hits / 20_000, 2);
  });

  test('a recording with fewer samples can’t hold them', () => {
    expect(chanceOfSamples(Float64Array.of(0, 1), 1, 3)).toBe(0);
    expect(chanceOfSamples(Float64Array.of(0, 0, 0, 1e-6), 1, 2)).toBe(0);
  });

  test('refuses a length that is none', () => {
    expect(() => chanceOfSamples(even, 0)).toThrow(expect.objectContaining({ path: 'seconds' }));
    expect(() => chanceOfSamples(even, 1, 0)).toThrow(expect.objectContaining({ path: 'samples' }));
  });
});
