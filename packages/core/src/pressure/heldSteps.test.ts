import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { heldSteps } from './heldSteps.js';

/** A pump-down: holds at levels with a leak between them, strokes of the pump in 0.3 s. */
function pumpDown(
  levels: readonly number[],
  rate: number,
  more: { noise?: number; step?: number; leak?: number } = {},
) {
  const { noise = 0.002, step = 0.001, leak = 0 } = more;
  const random = randomNumbers(3);
  const [time, volts]: [number[], number[]] = [[], []];
  levels.forEach((level, k) => {
    const from = k * 5;
    const before = levels[k - 1] ?? level;
    for (let i = 0; i < 5 * rate; i++) {
      const at = i / rate;
      const way = Math.min(1, at / 0.3);
      const held = at > 0.3 && k > 0 ? leak * (at - 0.3) : 0;
      const value = before + (level - before) * way + held + noise * random.normal();
      time.push(from + at);
      volts.push(Math.round(value / step) * step);
    }
  });
  return { time, volts };
}

describe('heldSteps', () => {
  test.each([
    [10, 0.002, 0.001],
    [100, 0.002, 0.001],
    [1000, 0.005, 0.0012],
    [1000, 0, 0.0012],
    [50, 0.0002, 0.02],
  ])('four levels at %d S/s, noise %d V, steps of %d V', (rate, noise, step) => {
    const levels = [4.08, 3.2, 2.35, 1.4];
    const { time, volts } = pumpDown(levels, rate, { noise, step });
    const found = heldSteps(time, volts);
    expect(found).toHaveLength(4);
    found.forEach((one, i) => {
      expect(Math.abs(one.volts - levels[i]!)).toBeLessThan(0.6 * step + 0.004);
      expect(one.end - one.start).toBeGreaterThan(4.4);
    });
  });

  test('the drift of a leak, and what it leaves uncertain', () => {
    const { time, volts } = pumpDown([4.08, 2, 1], 200, { leak: 0.01 });
    const found = heldSteps(time, volts);
    expect(found).toHaveLength(3);
    expect(found[1]!.drift!).toBeCloseTo(0.01, 3);
    expect(found[1]!.uncertainty).toBeCloseTo((0.01 * 4.7) / Math.sqrt(12), 3);
    expect(Math.abs(found[0]!.drift!)).toBeLessThan(0.002);
  });

  test.each([
    [20, 0, 0.001, 0.005],
    [10, 0, 0.001, 0.005],
    [2, 0.002, 1e-6, 0.002],
    [2, 0, 0.001, 0.005],
    [5, 0.002, 0.001, 0.01],
  ])('a leaking step at %d S/s, noise %d V, steps of %d V, %d V/s', (rate, noise, step, leak) => {
    const random = randomNumbers(5);
    const time = Array.from({ length: 16 * rate }, (_, i) => i / rate);
    const volts = time.map((t) => {
      const value = (t < 8 ? 4 : 1.5 + leak * (t - 8)) + noise * random.normal();
      return Math.round(value / step) * step;
    });
    const found = heldSteps(time, volts);
    expect(found).toHaveLength(2);
    const { drift, driftUncertainty, end, start } = found[1]!;
    expect(end - start).toBeGreaterThan(7);
    expect(Math.abs(drift! - leak)).toBeLessThan(3 * driftUncertainty!);
    expect(drift!).toBeGreaterThan(5 * driftUncertainty!);
    expect(Math.abs(found[0]!.drift!)).toBeLessThanOrEqual(3 * found[0]!.driftUncertainty!);
  });

  test('of four samples no drift is known', () => {
    const found = heldSteps([0, 1, 2, 3, 4, 5, 6, 7], [4, 4, 4, 4, 2, 2, 2, 2]);
    expect(found.map(({ volts, drift }) => [volts, drift])).toEqual([
      [4, undefined],
      [2, undefined],
    ]);
  });

  test('a ramp is no step, nor is what is too short', () => {
    const time = Array.from({ length: 1000 }, (_, i) => i / 100);
    const random = randomNumbers(8);
    const ramp = time.map((t) => 4 - 0.3 * t + 0.002 * random.normal());
    expect(heldSteps(time, ramp)).toEqual([]);
    const { time: at, volts } = pumpDown([4, 3, 2], 100);
    expect(heldSteps(at, volts, 6)).toEqual([]);
  });

  test('refuses moments that go back', () => {
    expect(() => heldSteps([0, 1, 0.5], [1, 1, 1])).toThrow(/time\[2\]/);
  });
});
