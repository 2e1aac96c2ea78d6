import { expect, test } from 'vitest';
import { normalProbability, upperQuantile } from './normalDistribution.js';

/** Values of the standard normal distribution as printed in any statistical table. */
test.each([
  [0, 0.5],
  [1, 0.8413447460685429],
  [1.959963984540054, 0.975],
  [-1, 0.15865525393145705],
  [3, 0.9986501019683699],
  [6, 0.9999999990134124],
])('Φ(%d) is %d', (z, probability) => {
  expect(normalProbability(z)).toBeCloseTo(probability, 14);
});

test('the tail keeps its relative precision far out', () => {
  expect(normalProbability(-6) / 9.865876450376946e-10).toBeCloseTo(1, 11);
});

test.each([0.4, 0.025, 1e-3, 2.5e-7, 2.5e-10])(
  'the quantile inverts the tail at %d',
  (probability) => {
    expect(normalProbability(-upperQuantile(probability)) / probability).toBeCloseTo(1, 11);
  },
);
