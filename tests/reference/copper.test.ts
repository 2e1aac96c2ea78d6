import { expect, test } from 'vitest';
import { meanAndDeviation } from '../../packages/core/src/statistics/meanAndDeviation.js';
import { medianAbsoluteDeviation } from '../../packages/core/src/statistics/medianAbsoluteDeviation.js';

/**
 * 24 determinations of copper in wholemeal flour, parts per million, with two gross outliers. Source of data and results:
 * the tests of statsmodels and of SciPy (`median_abs_deviation`), which print mean, median and both deviations.
 */
const copper = Float64Array.of(
  ...[2.2, 2.2, 2.4, 2.4, 2.5, 2.7, 2.8, 2.9, 3.03, 3.03, 3.1, 3.37],
  ...[3.4, 3.4, 3.4, 3.5, 3.6, 3.7, 3.7, 3.7, 3.7, 3.77, 5.28, 28.95],
);

test('median 3.385, median absolute deviation 0.355, scaled 0.52632; mean 4.2804', () => {
  const { median, deviation } = medianAbsoluteDeviation(copper);
  expect(median).toBeCloseTo(3.385, 12);
  expect(deviation).toBeCloseTo(0.52632, 5);
  expect(deviation / 1.482602218505602).toBeCloseTo(0.355, 12);
  expect(meanAndDeviation(copper).mean).toBeCloseTo(4.2804, 4);
});

test('three scaled deviations from the median single out the two outliers; three ordinary ones only one', () => {
  const beyond = (middle: number, deviation: number) =>
    Array.from(copper).filter((value) => Math.abs(value - middle) > 3 * deviation);
  const { median, deviation } = medianAbsoluteDeviation(copper);
  expect(beyond(median, deviation)).toEqual([5.28, 28.95]);
  const ordinary = meanAndDeviation(copper);
  // Computed from the data.
  expect(ordinary.deviation).toBeCloseTo(5.297395979787, 11);
  expect(beyond(ordinary.mean, ordinary.deviation)).toEqual([28.95]);
});
