import { type Correlation, combineUncertainties } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import gum from './gum.json' with { type: 'json' };

/** Source: JCGM 100:2008, annex H.1, named in the data file. */
describe('GUM H.1, calibration of an end gauge', () => {
  const { inputs, published, computed } = gum['H.1'];
  const { lS, d, aS, theta, da, dtheta } = inputs;
  const length = (
    ls: number,
    diff: number,
    alpha: number,
    th: number,
    dAlpha: number,
    dTh: number,
  ) => ls + diff - ls * (dAlpha * th + alpha * dTh);
  // Partial derivatives of l = lS + d − lS(δα·θ + αS·δθ) at the values given.
  const input = (name: string, sensitivity: number, of: { u: number; dof?: number }) => ({
    name,
    sensitivity,
    uncertainty: of.u,
    ...(of.dof !== undefined && { degreesOfFreedom: of.dof }),
  });
  const result = combineUncertainties([
    input('lS', 1 - (da.value * theta.value + aS.value * dtheta.value), lS),
    input('d', 1, d),
    input('aS', -lS.value * dtheta.value, aS),
    input('theta', -lS.value * da.value, theta),
    input('da', -lS.value * theta.value, da),
    input('dtheta', -lS.value * aS.value, dtheta),
  ]);

  test('the length', () => {
    const all = [lS, d, aS, theta, da, dtheta].map(({ value }) => value);
    expect(length(...(all as [number, number, number, number, number, number]))).toBe(published.l);
  });

  test('combined uncertainty, 32 nm', () => {
    expect(Math.round(result.uncertainty)).toBe(published.u);
    expect(result.uncertainty).toBeCloseTo(computed.u, 7);
  });

  test('contributions', () => {
    for (const { name, uncertainty } of result.contributions) {
      const figure = published.contributions[name as keyof typeof published.contributions];
      expect(uncertainty, name).toBeCloseTo(figure, 1);
    }
    expect(result.contributions.map(({ name }) => name).slice(0, 4)).toEqual([
      'lS',
      'dtheta',
      'd',
      'da',
    ]);
  });

  test('effective degrees of freedom, 16.7, which the guide cuts to 16; U = 2.92 · u = 93 nm', () => {
    expect(result.degreesOfFreedom).toBeCloseTo(computed.dof, 6);
    expect(Math.floor(result.degreesOfFreedom!)).toBe(published.dof);
    expect(Math.round(published.k99 * result.uncertainty)).toBe(published.U99);
  });
});

/** Source: JCGM 100:2008, annex H.2, named in the data file. */
describe('GUM H.2, resistance and reactance measured together', () => {
  const { data, published, computed, fromRoundedInputs: rounded } = gum['H.2'];
  type Name = 'V' | 'I' | 'phi';
  type Result = 'R' | 'X' | 'Z';
  type Values = Record<Name, { value: number; u: number }>;

  const mean = (of: readonly number[]) => of.reduce((sum, x) => sum + x, 0) / of.length;
  const covariance = (a: readonly number[], b: readonly number[]) => {
    const products = a.map((x, i) => (x - mean(a)) * (b[i]! - mean(b)));
    return mean(products) / (a.length - 1);
  };
  const correlation = (a: Name, b: Name) =>
    covariance(data[a], data[b]) /
    Math.sqrt(covariance(data[a], data[a]) * covariance(data[b], data[b]));
  const observed = (name: Name) => ({
    value: mean(data[name]),
    u: Math.sqrt(covariance(data[name], data[name])),
  });
  const pairs = [
    ['V', 'I'],
    ['V', 'phi'],
    ['I', 'phi'],
  ] as const;

  const values: Record<Result, (v: number, i: number, phi: number) => number> = {
    R: (v, i, phi) => (v / i) * Math.cos(phi),
    X: (v, i, phi) => (v / i) * Math.sin(phi),
    Z: (v, i) => v / i,
  };
  /** Partial derivatives by V, I and phi. */
  const sensitivities = (of: Result, { V, I, phi }: Values) => {
    const z = V.value / I.value;
    const share = { R: Math.cos(phi.value), X: Math.sin(phi.value), Z: 1 }[of];
    const turn = { R: -Math.sin(phi.value), X: Math.cos(phi.value), Z: 0 }[of];
    return { V: share / I.value, I: (-z / I.value) * share, phi: z * turn };
  };
  const combined = (of: Result, at: Values, correlations: readonly Correlation[]) => {
    const by = sensitivities(of, at);
    const inputs = (['V', 'I', 'phi'] as const).map((name) => ({
      name,
      sensitivity: by[name],
      uncertainty: at[name].u,
    }));
    return combineUncertainties(inputs, correlations).uncertainty;
  };

  const at: Values = { V: observed('V'), I: observed('I'), phi: observed('phi') };
  const exact = pairs.map(([a, b]): Correlation => [a, b, correlation(a, b)]);

  test('the observations: means, their uncertainties and correlations', () => {
    for (const name of ['V', 'I', 'phi'] as const) {
      expect(at[name].value / computed.means[name]).toBeCloseTo(1, 12);
      expect(at[name].u / computed.u[name]).toBeCloseTo(1, 5);
    }
    for (const [a, b, r] of exact) {
      const figure = published.correlations[`${a},${b}` as keyof typeof published.correlations];
      expect(r, `${a}, ${b}`).toBeCloseTo(figure, 2);
    }
  });

  test.each(['R', 'X', 'Z'] as const)('%s and its uncertainty with all correlations', (of) => {
    const value = values[of](at.V.value, at.I.value, at.phi.value);
    expect(value).toBeCloseTo(published[of].value, 2);
    expect(value).toBeCloseTo(computed[of].value, 8);
    const u = combined(of, at, exact);
    // Full figures give 0.2956 for X, where the guide prints 0.295.
    expect(Math.abs(u - published[of].u)).toBeLessThan(0.001);
    expect(u).toBeCloseTo(computed[of].u, 7);
  });

  test.each(['R', 'X', 'Z'] as const)('%s from inputs rounded as printed', (of) => {
    const printed = Object.entries(published.correlations).map(([names, r]): Correlation => {
      const [one = '', other = ''] = names.split(',');
      return [one, other, r];
    });
    expect(combined(of, rounded, printed)).toBeCloseTo(rounded.u[of], 9);
  });

  test('without the correlations the uncertainty of R would be more than twice too large', () => {
    expect(combined('R', at, [])).toBeGreaterThan(2 * published.R.u);
  });
});
