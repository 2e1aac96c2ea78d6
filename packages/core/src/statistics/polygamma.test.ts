import { expect, test } from 'vitest';
import { digamma, trigamma } from './polygamma.js';

const euler = 0.5772156649015329;

test('known values: ψ(1) = −γ, ψ(½) = −γ − 2 ln 2, ψ′(1) = π²/6, ψ′(½) = π²/2', () => {
  expect(digamma(1)).toBeCloseTo(-euler, 13);
  expect(digamma(0.5)).toBeCloseTo(-euler - 2 * Math.LN2, 13);
  expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 13);
  expect(trigamma(0.5)).toBeCloseTo(Math.PI ** 2 / 2, 12);
});

test('follow their recurrences and are derivatives of each other', () => {
  for (const x of [0.01, 0.7, 3, 11.5, 12, 80, 1e4]) {
    expect(digamma(x + 1) - digamma(x)).toBeCloseTo(1 / x, 10);
    expect((trigamma(x) - trigamma(x + 1)) * x * x).toBeCloseTo(1, 6);
    const step = x * 1e-4;
    const slope = (digamma(x + step) - digamma(x - step)) / (2 * step);
    expect(slope / trigamma(x)).toBeCloseTo(1, 6);
  }
});
