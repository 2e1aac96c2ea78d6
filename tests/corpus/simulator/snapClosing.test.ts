import { expect, test } from 'vitest';
import { snapClosing } from './snapClosing.js';

const step = 1e-5;
const snap = {
  kind: 'snap',
  acceleration: 2 / 0.04 ** 2,
  stiffening: 0.3,
  drag: 5,
  stopHertz: 3000,
  stopDamping: 0.3,
  closedAt: 0,
} as const;

test('a released throttle falls in its time, rebounds lower each time, and hardly dents its stop', () => {
  const travel = new Float64Array(40_000).fill(1);
  const settled = snapClosing(travel, 0, travel.length, step, snap);
  const landing = travel.findIndex((x) => x <= 0) * step;
  expect(landing).toBeGreaterThan(0.03);
  expect(landing).toBeLessThan(0.05);
  const peaks = Array.from(travel).filter(
    (x, i) => i * step > landing && x > 0.003 && x > travel[i - 1]! && x >= travel[i + 1]!,
  );
  expect(peaks.length).toBeGreaterThan(1);
  expect(peaks).toEqual([...peaks].sort((a, b) => b - a));
  expect(Math.min(...travel)).toBeGreaterThan(-0.01);
  expect(Math.max(...travel.subarray(settled + 1).map(Math.abs))).toBeLessThan(0.0031);
});
