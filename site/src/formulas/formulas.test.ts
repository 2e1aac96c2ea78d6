import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as core from '@truesweep/core';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { evaluate } from './evaluate.js';
import { formulaGroups } from './formulaGroups.js';

const formulas = formulaGroups.flatMap((group) => group.formulas);

test('each formula has a place of its own', () => {
  expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
});

describe.each(formulas)('$id', ({ tex, where, functions, worked, source, usedBy }) => {
  test('with its numbers put in it gives what the library gives, and each further line the same within its rounding', () => {
    const value = worked.byLibrary();
    for (const [i, line] of worked.steps.entries()) {
      const apart = Math.abs(evaluate(line) / value - 1);
      expect(apart, line).toBeLessThan(i === 0 ? 1e-6 : 2e-3);
    }
    expect(worked.steps.length).toBeGreaterThan(0);
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

  test('is used by pages that there are', () => {
    for (const path of usedBy) {
      const page = fileURLToPath(new URL(`../content/docs/${path}.mdx`, import.meta.url));
      expect(existsSync(page), path).toBe(true);
    }
  });
});

test('a line that is no calculation is refused', () => {
  expect(evaluate('5 V · 4.5 kΩ / 6 kΩ')).toBeCloseTo(3.75, 12);
  expect(evaluate('1 / (2 · π · 500 kΩ · 150 pF)')).toBeCloseTo(2122.066, 3);
  expect(() => evaluate('5 apples')).toThrow('no calculation');
});
