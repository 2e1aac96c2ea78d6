import { describe, expect, test } from 'vitest';
import { isInputError } from '../errors.js';
import { checkLaw } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';

function refused(law: unknown): string {
  try {
    checkLaw(law as ThermistorLaw, 'law');
  } catch (error) {
    if (isInputError(error)) return `${error.code} at ${error.path}`;
    throw error;
  }
  return 'taken';
}

const rows = [
  { temperature: 0, ohms: 5975 },
  { temperature: 20, ohms: 2502 },
  { temperature: 40, ohms: 1152 },
];
const table = (...changed: readonly object[]) => ({
  kind: 'table',
  rows: rows.map((row, i) => ({ ...row, ...changed[i] })),
});
const b = { kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100 };
const steinhartHart = {
  ...{ kind: 'steinhart-hart', a: 1.336e-3, b: 2.559e-4, c: 1.512e-7, lowest: -40, highest: 150 },
};

describe("a thermistor's law", () => {
  test.each([
    ['a table', table()],
    [
      'with limits',
      table({ low: 5500, high: 6500 }, { low: 2300, high: 2700 }, { low: 1000, high: 1300 }),
    ],
    ['one B', b],
    ['one B downward', { ...b, from: 100, to: 25 }],
    ['Steinhart and Hart', steinhartHart],
    ['without its last term', { ...steinhartHart, c: 0 }],
    ['with one of nearly nothing, below 0', { ...steinhartHart, c: -1e-12 }],
  ])('%s is taken', (_, law) => {
    expect(refused(law)).toBe('taken');
  });

  test.each([
    ['no kind', { kind: 'spline' }, 'unknown-choice at law.kind'],
    ['one row', { kind: 'table', rows: rows.slice(0, 1) }, 'out-of-range at law.rows'],
    [
      'two rows of one temperature',
      table({}, { temperature: 0 }),
      'out-of-order at law.rows[1].temperature',
    ],
    ['a row that rises', table({}, { ohms: 6000 }), 'out-of-order at law.rows[1].ohms'],
    ['limits in some rows only', table({ low: 1, high: 9e3 }), 'out-of-order at law.rows[1]'],
    ['one limit of two', table({ low: 1 }, { low: 1 }, { low: 1 }), 'out-of-order at law.rows[0]'],
    [
      'a nominal one outside its limits',
      table({ low: 6000, high: 7000 }, { low: 1, high: 3000 }, { low: 1, high: 3000 }),
      'out-of-order at law.rows[0]',
    ],
    [
      'limits that rise',
      table({ low: 1, high: 6000 }, { low: 2, high: 5000 }, { low: 1, high: 4000 }),
      'out-of-order at law.rows[1].ohms',
    ],
    ['a B of one temperature', { ...b, to: 25 }, 'out-of-order at law.to'],
    [
      'a range the wrong way round',
      { ...b, lowest: 90, highest: 80 },
      'out-of-order at law.highest',
    ],
    ['a B of nothing', { ...b, b: 0 }, 'out-of-range at law.b'],
    ['a resistance of nothing', { ...b, ohms: 0 }, 'out-of-range at law.ohms'],
    ['below absolute zero', { ...b, from: -300 }, 'out-of-range at law.from'],
    ['a slope of nothing', { ...steinhartHart, b: 0 }, 'out-of-range at law.b'],
    ['a curve that turns back', { ...steinhartHart, c: -1e-6 }, 'out-of-order at law.c'],
    ['no number', { ...steinhartHart, a: Number.NaN }, 'not-finite at law.a'],
    ['an unknown field', { ...b, beta: 3640 }, 'unknown-field at law.beta'],
  ])('%s is refused', (_, law, told) => {
    expect(refused(law)).toBe(told);
  });
});
