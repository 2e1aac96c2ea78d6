import { expect, test } from 'vitest';
import { axisUnit } from './axisUnit.js';

test.each([
  [5, { name: 'V', divisor: 1 }],
  [0.35, { name: 'mV', divisor: 1e-3 }],
  [1, { name: 'V', divisor: 1 }],
  [0.96, { name: 'V', divisor: 1 }],
  [12000, { name: 'kV', divisor: 1e3 }],
  [0, { name: 'V', divisor: 1 }],
])('an axis up to %d V', (largest, unit) => {
  expect(axisUnit(largest, 'V')).toEqual(unit);
});

test('an axis of travel is in percent', () => {
  expect(axisUnit(1, '%')).toEqual({ name: '%', divisor: 0.01 });
});
