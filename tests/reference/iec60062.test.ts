import { formatResistanceCode, parseQuantity } from '@truesweep/core';
import { expect, test } from 'vitest';

/** Source: examples of the letter code of IEC 60062, second-hand: an encyclopaedia's article on the RKM code. */
test.each([
  ['R47', 0.47],
  ['4R7', 4.7],
  ['470R', 470],
  ['4K7', 4700],
  ['47K', 47_000],
  ['47K3', 47_300],
  ['470K', 470_000],
  ['4M7', 4_700_000],
])('%s is %d Ω', (code, ohms) => {
  expect(parseQuantity(code, 'Ω')).toBeCloseTo(ohms, 9);
  expect(formatResistanceCode(ohms)).toBe(code);
});
