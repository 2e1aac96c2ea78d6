import { describe, expect, test } from 'vitest';
import type { Bins } from './bins.js';
import { withoutRipple } from './withoutRipple.js';

function bins(value: (time: number) => number): Bins {
  const time = Float64Array.from({ length: 4000 }, (_, i) => i * 1e-3);
  const mean = time.map(value);
  return { samplesPerBin: 1, interval: 1e-3, time, mean, low: mean, high: mean };
}

describe('withoutRipple', () => {
  const hum = (time: number) =>
    0.1 * Math.sin(2 * Math.PI * 50 * time + 1) + 0.02 * Math.sin(2 * Math.PI * 150 * time);
  const path = new Float64Array(4000).fill(2);

  test('takes out the mains frequency and its harmonics', () => {
    const { mean } = withoutRipple(
      bins((time) => 2 + hum(time)),
      path,
      50,
    );
    expect(Math.max(...mean.map((volts) => Math.abs(volts - 2)))).toBeLessThan(1e-9);
  });

  test('leaves a dropout as it is', () => {
    const dropout = (time: number) => (time >= 1.2 && time < 1.21 ? 0 : 2);
    const { mean } = withoutRipple(
      bins((time) => dropout(time) + hum(time)),
      path,
      50,
    );
    expect(mean[1205]).toBeCloseTo(0, 6);
    expect(mean[1500]).toBeCloseTo(2, 6);
  });
});
