import { readFileSync } from 'node:fs';
import { straightLine } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { meanAndDeviation } from '../../packages/core/src/statistics/meanAndDeviation.js';

/**
 * Source: NIST/ITL, Statistical Reference Datasets (StRD), "Univariate Summary Statistics" and "Linear Regression";
 * the files in the folder `nist` are NIST's own, with the certified values in their heads.
 */
function nistFile(name: string) {
  const text = readFileSync(new URL(`nist/${name}.dat`, import.meta.url), 'utf8');
  /** The numbers that end the line which begins with a label. */
  const certified = (label: RegExp): number[] => {
    const line = text.split('\n').find((one) => label.test(one))!;
    return line
      .match(/(\s+[-\d.E+]+)+\s*$/)![0]
      .trim()
      .split(/\s+/)
      .map(Number);
  };
  const rows = text
    .slice(text.lastIndexOf('Data:'))
    .split('\n')
    .slice(1)
    .filter((line) => /\d/.test(line))
    .map((line) => line.trim().split(/\s+/).map(Number));
  return { certified, rows };
}

/** Figures in which a value agrees with a certified one: −log₁₀ of the relative error. */
const figures = (value: number, certified: number) =>
  value === certified ? 16 : -Math.log10(Math.abs(value / certified - 1));

describe('NIST StRD, univariate summary statistics', () => {
  // Rows read, and figures asked of the deviation. The numbers of NumAcc3 and NumAcc4 are no binary fractions:
  // rounding each to the nearest double costs figures before any arithmetic.
  test.each([
    ['Lottery', 218, 14],
    ['Lew', 200, 14],
    ['Mavro', 50, 12],
    ['Michelso', 100, 13],
    ['NumAcc1', 3, 15],
    ['NumAcc2', 1001, 13],
    ['NumAcc3', 1001, 9],
    ['NumAcc4', 1001, 8],
  ] as const)('%s: mean and standard deviation', (name, count, asked) => {
    const { certified, rows } = nistFile(name);
    expect(rows).toHaveLength(count);
    const { mean, deviation } = meanAndDeviation(rows.map(([y]) => y!));
    expect(figures(mean, certified(/^Sample Mean/)[0]!)).toBeGreaterThan(14);
    expect(figures(deviation, certified(/^Sample Standard Deviation/)[0]!)).toBeGreaterThan(asked);
  });
});

test('NIST StRD, linear regression: Norris', () => {
  const { certified, rows } = nistFile('Norris');
  expect(rows).toHaveLength(36);
  const [y, x] = [rows.map((row) => row[0]!), rows.map((row) => row[1]!)];
  const line = straightLine(x, y)!;
  const [intercept, interceptUncertainty] = certified(/^\s+B0\s/);
  const [slope, slopeUncertainty] = certified(/^\s+B1\s/);
  const [deviation] = certified(/^\s+Standard Deviation\s+[\d.]/);
  expect(figures(line.intercept, intercept!)).toBeGreaterThan(12);
  expect(figures(line.slope, slope!)).toBeGreaterThan(13);
  expect(figures(line.interceptUncertainty, interceptUncertainty!)).toBeGreaterThan(13);
  expect(figures(line.slopeUncertainty, slopeUncertainty!)).toBeGreaterThan(13);
  expect(figures(line.deviation, deviation!)).toBeGreaterThan(13);
});
