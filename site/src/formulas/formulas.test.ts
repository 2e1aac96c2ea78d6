import * as core from '@truesweep/core';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { circuitFormulas } from './circuitFormulas.js';
import { instrumentFormulas } from './instrumentFormulas.js';
import { uncertaintyFormulas } from './uncertaintyFormulas.js';
import { vehicleFormulas } from './vehicleFormulas.js';

const formulas = [
  circuitFormulas,
  uncertaintyFormulas,
  instrumentFormulas,
  vehicleFormulas,
].flatMap((group) => group.formulas);

test('each formula has a place of its own', () => {
  expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
});

describe.each(formulas)('$id', ({ tex, where, functions, worked, source }) => {
  test('written out it gives what the library gives', () => {
    const [formula, library] = [worked.byFormula(), worked.byLibrary()];
    expect(Math.abs(library / formula - 1)).toBeLessThan(1e-6);
  });

  test('is typeset without an error, and names functions of the library and its source', () => {
    for (const one of [tex, ...where.map(([symbol]) => symbol)])
      expect(katex.renderToString(one, { output: 'mathml', throwOnError: true })).toContain(
        '<math',
      );
    for (const name of functions) expect(core, name).toHaveProperty(name);
    expect(functions.length).toBeGreaterThan(0);
    expect(source).toMatch(/\S/);
  });
});
