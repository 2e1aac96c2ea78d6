import {
  checkFields,
  checkReadable,
  checkText,
  type FieldRules,
  InputError,
  listOf,
} from '@truesweep/core';
import { type Expression, functionNames, symbolsOf } from './expression.js';
import { unitNames } from './quantity.js';
import { someNumber } from './someNumber.js';
import type { Working } from './working.js';
import { mostDigits } from './writeQuantity.js';

const units = Object.keys(unitNames);

const quantity: FieldRules = {
  symbol: checkText,
  meaning: checkText,
  value: someNumber,
  unit: units,
  'uncertainty?': someSize,
};

const input: FieldRules = { ...quantity, digits: someDigits };

const step = { finds: checkText, rule: { name: checkText, source: checkText } };

const steps: Readonly<Record<string, FieldRules>> = {
  calculation: {
    ...step,
    kind: ['calculation'],
    formula: someExpression,
    inputs: listOf(input),
    result: quantity,
  },
  comparison: {
    ...step,
    kind: ['comparison'],
    left: quantity,
    relation: ['<', '≤', '>', '≥', '≈', '≠'],
    right: quantity,
    so: checkText,
  },
  table: {
    ...step,
    kind: ['table'],
    columns: listOf(checkText, 1),
    rows: listOf({ name: checkText, cells: listOf(quantity) }),
  },
};

const rules: FieldRules = {
  title: checkText,
  given: listOf(input),
  steps: listOf(someStep),
  answer: quantity,
  'conclusion?': checkText,
};

/** Refuses what is no working, by the path of the field. */
export function checkWorking(working: Working): void {
  checkFields(working, 'working', rules);
}

function someStep(value: unknown, path: string): void {
  checkReadable(value, path);
  const { kind = '' } = (value ?? {}) as { readonly kind?: string };
  checkFields(value, path, steps[kind] ?? steps.calculation!);
  if (kind !== 'calculation') return;
  const { formula, inputs } = value as { formula: Expression; inputs: { symbol: string }[] };
  const known = inputs.map(({ symbol }) => symbol);
  checkSymbols(formula, known, `${path}.formula`);
}

function someSize(value: unknown, path: string): void {
  someNumber(value, path);
  if ((value as number) > 0) return;
  throw new InputError('out-of-range', path, `${path} is ${value}; it must be above 0.`);
}

function someDigits(value: unknown, path: string): void {
  if (Number.isInteger(value) && (value as number) >= 1 && (value as number) <= mostDigits) return;
  const wanted = `a whole number from 1 to ${mostDigits}`;
  throw new InputError('out-of-range', path, `${path} is none; it must be ${wanted}.`);
}

const several = (value: unknown, path: string) => listOf(someExpression, 1)(value, path);
const pair = (value: unknown, path: string) => listOf(someExpression, 2, 2)(value, path);

const expressions: Readonly<Record<string, FieldRules>> = {
  number: { number: someNumber },
  symbol: { symbol: checkText },
  sum: { sum: several },
  negative: { negative: someExpression },
  product: { product: several },
  quotient: { quotient: pair },
  power: { power: pair },
  root: { root: someExpression },
  call: {
    call: functionNames,
    of: several,
  },
};

function someExpression(value: unknown, path: string): void {
  checkReadable(value, path);
  const kind = Object.keys(expressions).find(
    (name) => typeof value === 'object' && value !== null && name in value,
  );
  checkFields(value, path, expressions[kind ?? 'symbol']!);
}

/** Each symbol of a formula needs a value for its line of numbers. */
function checkSymbols(formula: Expression, known: readonly string[], path: string): void {
  const missing = symbolsOf(formula).find((symbol) => !known.includes(symbol));
  if (missing === undefined) return;
  throw new InputError(
    'unknown-name',
    path,
    `${path} has the symbol ${missing}, which is none of the inputs; give each a value.`,
  );
}
