import { describe, expect, test } from 'vitest';
import { findCuts } from './cuts.js';
import { plainLevels } from './plainLevels.js';

/** A bin each interval, none of them in a fast move. */
const cutsOf = (interval: number, ...levels: number[]): number[] => {
  const time = Float64Array.from(levels, (_, i) => i * interval);
  const found = findCuts(plainLevels(time, Float64Array.from(levels)), new Uint8Array(time.length));
  return [...found.keys()].filter((i) => found[i]);
};

describe('findCuts', () => {
  test('marks the first bin after an edge', () => {
    const levels = Array.from({ length: 100 }, (_, i) => (i < 50 ? 0.5 : 0.4));
    expect(cutsOf(1e-3, ...levels)).toEqual([50]);
  });

  // A smooth stroke through the span in 0.25 s, as quick hands do it: 0.49 of it lies between two samples.
  test("marks no quick hand's stroke between samples far apart", () => {
    expect(cutsOf(0.05, 1, 1, 1, 0.76, 0.27, 0.18, 0.11, 0.09, 0.09)).toEqual([]);
  });

  test('marks what no hand does between samples far apart', () => {
    expect(cutsOf(0.05, 1, 1, 1, 1, 0.4, 0.4, 0.4, 0.4, 0.4)).toEqual([4]);
  });
});
