import { expect, test } from 'vitest';
import { withoutLoneOutliers } from './withoutLoneOutliers.js';

const time = Float64Array.from({ length: 9 }, (_, i) => i / 10);

test('puts a lone outlier on the line and leaves its neighbours', () => {
  const ramp = time.map((at) => 2 * at);
  const hit = Float64Array.from(ramp);
  hit[4] = 0.1;
  const path = withoutLoneOutliers(time, hit);
  for (const [i, level] of ramp.entries()) expect(path[i]).toBeCloseTo(level, 12);
});

test('leaves a bend and a step', () => {
  const bend = time.map((at) => Math.max(0, at - 0.4));
  expect(withoutLoneOutliers(time, bend)).toEqual(bend);
  const step = time.map((at) => (at < 0.35 ? 0 : 1));
  expect(withoutLoneOutliers(time, step)).toEqual(step);
});

test('equal times and short recordings make no NaN', () => {
  const equal = withoutLoneOutliers(new Float64Array(4), Float64Array.of(0, 1, 0, 1));
  expect(equal.every(Number.isFinite)).toBe(true);
  expect(withoutLoneOutliers(time.slice(0, 2), Float64Array.of(1, 2))).toEqual(
    Float64Array.of(1, 2),
  );
});
