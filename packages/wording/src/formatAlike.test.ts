import { formatQuantity } from '@truesweep/core';
import { expect, test } from 'vitest';
import { formatAlike } from './formatAlike.js';

test('the largest value is written as it is alone', () => {
  for (const [value, unit] of [
    [4700, 'Ω'],
    [0.9996, 'V'],
    [0.0075, 's'],
    [0.05, '%'],
  ] as const) {
    const { numbers, unit: shown } = formatAlike([value], unit);
    expect(`${numbers[0]}\u00a0${shown}`).toBe(formatQuantity(value, unit));
  }
});

test('smaller values take its prefix and decimals, and a rounded zero has no sign', () => {
  expect(formatAlike([-0.0001, 0.31, 4.2], 'V')).toEqual({
    numbers: ['0.00', '0.31', '4.20'],
    unit: 'V',
  });
  expect(formatAlike([0.015, 0.05], '%').numbers).toEqual(['1.50', '5.00']);
});

test('beyond every prefix each has its own power of ten', () => {
  expect(formatAlike([1e-20, -2.5e-21, 0], 'V')).toEqual({
    numbers: ['1.00e−20', '−2.50e−21', '0.00e0'],
    unit: 'V',
  });
  expect(formatAlike([1e12], '%')).toEqual({ numbers: ['1.00e14'], unit: '%' });
  expect(formatAlike([5e-324], 's', 1).numbers).toEqual(['5e−324']);
});

test('zeros alone have no decimals', () => {
  expect(formatAlike([0, 0], 'V')).toEqual({ numbers: ['0', '0'], unit: 'V' });
});
