import { describe, expect, test } from 'vitest';
import { withoutSeams } from './withoutSeams.js';

const time = Float64Array.from([0, 0, 0.01, 0.01, 0.02, 0.02, 0.9, 0.9, 0.91, 0.91]);
const signal = time.map((_, i) => i);

describe('withoutSeams', () => {
  test('leaves out the rows that bear the stamp before a pause', () => {
    const { supply, ...without } = withoutSeams({ time, signal, supply: signal });
    expect([...without.signal]).toEqual([0, 1, 2, 3, 6, 7, 8, 9]);
    expect(without.time).toEqual(time.filter((at) => at !== 0.02));
    expect(supply).toEqual(without.signal);
  });

  test('leaves a sweep without a pause as it is', () => {
    const sweep = { time: time.subarray(0, 6), signal: signal.subarray(0, 6) };
    expect(withoutSeams(sweep)).toBe(sweep);
  });
});
