import { expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { fitTrend, type TrendPoint } from './fitTrend.js';

const points = (values: readonly number[], uncertainty?: number): TrendPoint[] =>
  values.map((value, at) => ({ at, value, ...(uncertainty !== undefined && { uncertainty }) }));

// JCGM 100:2008 (GUM), H.3.1 and table H.6: corrections of a thermometer at eleven readings; y = y1 + y2 (t − 20 °C).
const thermometer = [
  [21.521, -0.171],
  [22.012, -0.169],
  [22.512, -0.166],
  [23.003, -0.159],
  [23.507, -0.164],
  [23.999, -0.165],
  [24.513, -0.156],
  [25.002, -0.157],
  [25.503, -0.159],
  [26.01, -0.161],
  [26.511, -0.16],
] as const;

test('slope and its uncertainty of the GUM’s calibration of a thermometer', () => {
  const trend = fitTrend(thermometer.map(([at, value]) => ({ at, value })))!;
  expect(trend.slope).toBeCloseTo(0.00218, 5);
  expect(trend.slopeUncertainty).toBeCloseTo(0.00067, 5);
  expect(trend.deviation).toBeCloseTo(0.0035, 4);
  expect(trend.degreesOfFreedom).toBe(9);
  expect(trend.coverageFactor).toBeCloseTo(2.26, 2);
  expect(trend.changed).toBe(true);
});

test('what was stated of the values is the least that they scatter by', () => {
  const rising = points([1, 2, 3.1, 4], 1);
  expect(fitTrend(points([1, 2, 3.1, 4]))!.changed).toBe(true);
  expect(fitTrend(rising)!.deviation).toBe(1);
  expect(fitTrend(rising)!.changed).toBe(false);
});

test('two values tell a trend only where the scatter of others is known, and equal ones never do', () => {
  expect(fitTrend(points([1, 2]))).toBeUndefined();
  const scatter = { deviation: 0.1, degreesOfFreedom: 60 };
  expect(fitTrend(points([1, 2]), { scatter })).toMatchObject({
    changed: true,
    degreesOfFreedom: 60,
  });
  expect(
    fitTrend(points([1, 2]), { scatter: { deviation: 0.1, degreesOfFreedom: 0.5 } }),
  ).toBeUndefined();
  expect(fitTrend([...points([1]), { at: 0, value: 2 }, { at: 0, value: 3 }])).toBeUndefined();
  for (const value of [0.513, 1 / 3, 1e-9, 0])
    for (const count of [3, 4, 7])
      expect(fitTrend(points(Array(count).fill(value)))!.changed).toBe(false);
});

test('known scatter takes the place of the own, shared by its degrees of freedom', () => {
  const values = points([0, 2, 0, 2, 0]);
  const { own } = fitTrend(values)!;
  const known = fitTrend(values, { scatter: { deviation: 3, degreesOfFreedom: Infinity } })!;
  expect(known.deviation).toBe(3);
  const shared = fitTrend(values, { scatter: { deviation: 3, degreesOfFreedom: 9 } })!;
  expect(shared.deviation).toBeCloseTo(Math.sqrt((3 * own!.deviation ** 2 + 9 * 9) / 12), 12);
  expect(shared.degreesOfFreedom).toBe(12);
  // Of a sensor that scatters more than the others it stays its own.
  const less = fitTrend(values, { scatter: { deviation: 0.1, degreesOfFreedom: 9 } })!;
  expect(less.deviation).toBe(own!.deviation);
  expect(less.degreesOfFreedom).toBe(12);
});

test('neither the order, nor the clock, nor the unit matters', () => {
  const random = randomNumbers(7);
  for (let run = 0; run < 200; run++) {
    const given = points(Array.from({ length: 3 + (run % 6) }, () => random.normal()));
    const trend = fitTrend(given)!;
    const moved = fitTrend(
      given.toReversed().map(({ at, value }) => ({ at: 1e9 + at * 3e7, value: 5 + value * 1e-3 })),
    )!;
    expect(moved.changed).toBe(trend.changed);
    expect((moved.slope * 3e7) / 1e-3 / trend.slope).toBeCloseTo(1, 6);
    expect((moved.expanded * 3e7) / 1e-3 / trend.expanded).toBeCloseTo(1, 6);
  }
});

test('values that do not change are told to change in 5 % of series, however few they are', () => {
  const random = randomNumbers(8);
  for (const count of [3, 4, 8]) {
    let told = 0;
    for (let run = 0; run < 4000; run++)
      if (fitTrend(points(Array.from({ length: count }, () => random.normal())))!.changed) told++;
    // 5 % of 4,000 is 200 with a standard deviation of 14.
    expect(told).toBeGreaterThan(145);
    expect(told).toBeLessThan(255);
  }
});

test('what is no value, uncertainty or option is refused with its place', () => {
  const one = { at: 0, value: 1 };
  const path = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      return (error as { path: string }).path;
    }
    return undefined;
  };
  expect(path(() => fitTrend([one, { at: 1, value: Number.NaN }]))).toBe('points[1].value');
  expect(path(() => fitTrend([{ ...one, uncertainty: -1 }]))).toBe('points[0].uncertainty');
  expect(path(() => fitTrend([one], { coverage: 95 }))).toBe('options.coverage');
  expect(path(() => fitTrend([one], { scatter: { deviation: 1, degreesOfFreedom: -1 } }))).toBe(
    'options.scatter.degreesOfFreedom',
  );
});
