import { describe, expect, test } from 'vitest';
import { digitsOf, writeConstant, writeNumber, writeQuantity } from './writeQuantity.js';

describe('prefixes at their borders', () => {
  test.each([
    [999.95, 'Ω', 4, '1.000\u00a0kΩ'],
    [999.94, 'Ω', 4, '999.9\u00a0Ω'],
    [0.99996, 'V', 4, '1.000\u00a0V'],
    [999_950, 'Ω', 4, '1.000\u00a0MΩ'],
    [-0.000_999_96, 'A', 4, '−1.000\u00a0mA'],
    [101_325, 'Pa', 4, '101.3\u00a0kPa'],
    [0.001, 'S', 3, '1.00\u00a0mS'],
    [0.999_95, '%', 4, '100.0\u00a0%'],
    [298.15, 'K', 5, '298.15\u00a0K'],
    [21.5, '°C', 3, '21.5\u00a0°C'],
    [-3, '°', 2, '−3.0°'],
    [9e-6, '1/Pa', 2, '9.0e−6\u00a01/Pa'],
    [0, 'V', 4, '0\u00a0V'],
  ] as const)('%d %s in %d digits is %s', (value, unit, digits, text) => {
    expect(writeQuantity({ value, unit }, digits)).toBe(text);
  });
});

test('digits follow the uncertainty, to its second digit', () => {
  expect(digitsOf({ value: 0.50931, uncertainty: 0.0057 })).toBe(4);
  expect(digitsOf({ value: 0.50931, uncertainty: 0.57 })).toBe(2);
  expect(digitsOf({ value: 5, uncertainty: 1e-9 })).toBe(11);
  expect(digitsOf({ value: 0, uncertainty: 1 })).toBe(4);
});

test('what ends soon is written to its end, anything else in four digits', () => {
  expect(digitsOf({ value: 298.15 })).toBe(5);
  expect(digitsOf({ value: 3.75 })).toBe(4);
  expect(digitsOf({ value: 1 / 3 })).toBe(4);
});

test('numbers far from one have an exponent, those of formulas their letter', () => {
  expect(writeNumber(1.2346e-9, 4)).toBe('1.235e−9');
  expect(writeNumber(1_234_567, 4)).toBe('1234567');
  expect(writeNumber(12_345_678, 4)).toBe('1.235e7');
  expect(writeConstant(Math.PI)).toBe('π');
  expect(writeConstant(0.25)).toBe('0.25');
});
