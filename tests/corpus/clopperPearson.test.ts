import { expect, test } from 'vitest';
import { clopperPearson } from './clopperPearson.js';

/** NIST/SEMATECH e-Handbook, 7.2.4.1: 4 of 20, 90 % two-sided, found there by a numerical solver; values from memory. */
test('the bounds are the published ones for 4 of 20', () => {
  expect(clopperPearson('lower', 4, 20)).toBeCloseTo(0.071354, 5);
  expect(clopperPearson('upper', 4, 20)).toBeCloseTo(0.401029, 5);
});

test('without a hit the bound has a closed form', () => {
  expect(clopperPearson('upper', 0, 1000)).toBeCloseTo(1 - 0.05 ** (1 / 1000), 12);
  expect(clopperPearson('lower', 1000, 1000)).toBeCloseTo(0.05 ** (1 / 1000), 12);
});

test('without trials nothing is known', () => {
  expect(clopperPearson('lower', 0, 0)).toBe(0);
  expect(clopperPearson('upper', 0, 0)).toBe(1);
});
