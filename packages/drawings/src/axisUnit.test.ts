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

test('beyond every prefix the unit itself', () => {
  expect(axisUnit(1e-20, 'V')).toEqual({ name: 'V', divisor: 1 });
  expect(axisUnit(5e-324, 's')).toEqual({ name: 's', divisor: 1 });
});
