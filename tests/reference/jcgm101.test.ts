import { type DrawnInput, monteCarlo } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import gum from './gum.json' with { type: 'json' };

const { published, computed } = gum['JCGM 101 9.2'];
const draws = 1_000_000;

function sumOfFour(distribution: DrawnInput['distribution'], width: number) {
  const input = { value: 0, distribution, width };
  return monteCarlo(
    [input, input, input, input],
    ([a, b, c, d]) => a! + b! + c! + d!,
    draws,
    20_260_401,
  );
}

/** Standard error of a drawn quantile: √(p(1 − p)/n) over the density there. */
const quantileError = (density: number) => Math.sqrt((0.025 * 0.975) / draws) / density;

/** Source: JCGM 101:2008, 9.2, named in the data file: the sum of four inputs, each of standard deviation 1. */
describe('JCGM 101, 9.2: additive model', () => {
  test('normal inputs: u = 2, 95 % between ±3.92', () => {
    const result = sumOfFour('normal', 1);
    expect(Math.abs(result.mean)).toBeLessThan(4 * result.meanError);
    expect(Math.abs(result.standardDeviation - published.u)).toBeLessThan(
      4 * result.standardDeviationError,
    );
    const density = Math.exp(-(1.96 ** 2) / 2) / Math.sqrt(2 * Math.PI) / 2;
    expect(quantileError(density)).toBeLessThan(0.006);
    expect(Math.abs(result.high - published.normal95)).toBeLessThan(4 * quantileError(density));
    expect(Math.abs(result.low + published.normal95)).toBeLessThan(4 * quantileError(density));
  });

  test('rectangular inputs: u = 2, 95 % between ±3.88', () => {
    const result = sumOfFour('rectangular', Math.sqrt(3));
    expect(Math.abs(result.standardDeviation - published.u)).toBeLessThan(
      4 * result.standardDeviationError,
    );
    // Beyond 2√3 of its middle the density of a sum of four is t³ / (6 · 144), t counted from its end, 4√3.
    const exact = computed.rectangular95;
    const density = (4 * Math.sqrt(3) - exact) ** 3 / (6 * 144);
    expect(quantileError(density)).toBeLessThan(0.006);
    expect(exact).toBeCloseTo(2 * Math.sqrt(3) * (2 - 0.6 ** 0.25), 12);
    expect(exact).toBeCloseTo(published.rectangular95, 2);
    expect(Math.abs(result.high - exact)).toBeLessThan(4 * quantileError(density));
    expect(Math.abs(result.low + exact)).toBeLessThan(4 * quantileError(density));
  });
});
