import { expect, test } from 'vitest';
import { finiteBetween, oneOf, positive, resistance, wholeNumber } from './guard.js';

test('what is right comes back', () => {
  expect(finiteBetween(0.5, 0, 1, 'x')).toBe(0.5);
  expect(positive(3, 'x')).toBe(3);
  expect([0, 4700, Number.POSITIVE_INFINITY].map((ohms) => resistance(ohms, 'x'))).toEqual([
    0,
    4700,
    Number.POSITIVE_INFINITY,
  ]);
});

test.each([
  [
    () => finiteBetween(2, 0, 1, 'x'),
    'out-of-range',
    'x is 2; it must be a finite number from 0 to 1.',
  ],
  [
    () => finiteBetween(-2, 0, 9, 'x', 'V'),
    'negative',
    'x is −2; it must be a finite number from 0 to 9 V.',
  ],
  [() => finiteBetween(Number.NaN, 0, 1, 'x'), 'not-finite', /NaN/],
  [() => finiteBetween(undefined, 0, 1, 'x'), 'missing', /missing/],
  [
    () => positive(0, 'x', 's'),
    'zero',
    'x is 0; it must be a number above 0 s, from 1e-30 to 1e30.',
  ],
  [() => positive(Number.POSITIVE_INFINITY, 'x'), 'not-finite', /Infinity/],
  [
    () => resistance(-1, 'x'),
    'negative',
    'x is −1; it must be a resistance: 0 Ω, from 1e-12 to 1e18 Ω, or Infinity for no connection.',
  ],
  [() => resistance('4k7', 'x'), 'not-finite', /the text "4k7"/],
  [() => resistance(1e-15, 'x'), 'out-of-range', /1e-12/],
  [
    () => oneOf('c', ['a', 'b'], 'x'),
    'unknown-choice',
    'x is the text "c"; it must be one of: a, b.',
  ],
  [() => oneOf(undefined, ['a'], 'x'), 'missing', /one of: a/],
  [
    () => wholeNumber(1.5, 0, 9, 'x'),
    'not-whole',
    'x is 1.5; it must be a whole number from 0 to 9.',
  ],
])('what is wrong (%#) is refused by code and sentence', (check, code, message) => {
  expect(check).toThrow(expect.objectContaining({ name: 'InputError', code, path: 'x' }));
  expect(check).toThrow(message);
});
