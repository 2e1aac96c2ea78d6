import { InputError } from '@truesweep/core';
import { evaluate, measured, numberIn, type Value } from './evaluate.js';
import { type Expression, symbolsOf } from './expression.js';
import { numericLine } from './numericLine.js';
import type { Quantity } from './quantity.js';
import type { Comparison, Relation, Rule, Step, StepInput, Table, Working } from './working.js';
import { digitsOf, givenDigits } from './writeQuantity.js';

/** A value to find: its name, its unit and the formula. */
interface Find extends Omit<Quantity, 'value'> {
  readonly formula: Expression;
  readonly rule: Rule;
}

/** The steps of a working as they are written down. */
export interface Sheet {
  /**
   * Names a value that is given; says its symbol. One that was found elsewhere, as by search, is written with as many digits as are sensible,
   * any other as it is.
   */
  give(quantity: Quantity, from?: 'found'): string;
  /** Works a value out by a formula of what is known already; says what it comes to. */
  find(what: Find): number;
  /** Whether a symbol is known. */
  has(symbol: string): boolean;
  /** What a known symbol comes to. */
  value(symbol: string): number;
  /** Holds two known values against each other; says whether `relation` holds, and writes down the one that does. */
  compare(what: {
    readonly finds: string;
    readonly left: string;
    readonly relation: Relation;
    readonly right: string;
    readonly so: (holds: boolean) => string;
    readonly rule: Rule;
  }): boolean;
  /** Writes known values side by side. */
  table(
    what: Omit<Table, 'kind' | 'rows'> & {
      readonly rows: readonly { readonly name: string; readonly symbols: readonly string[] }[];
    },
  ): void;
}

const opposite: Readonly<Record<Relation, Relation>> = {
  '<': '≥',
  '≥': '<',
  '>': '≤',
  '≤': '>',
  '≈': '≠',
  '≠': '≈',
};

/** Values are told as equal that differ by less than this part of the larger. */
const alike = 1e-6;

/** What a working comes to. */
export interface Outcome {
  /** The symbol of the answer; that of the last value found when left out. */
  readonly answer?: string;
  /** What follows, in words; nothing when left out. */
  readonly conclusion?: string;
}

/**
 * Works something out: `write` puts its steps onto a sheet. Values keep all their digits from step to step, their units go with them, and a
 * step whose formula gives another unit than it says throws.
 *
 * @param write Says what it comes to.
 */
export function workOut(title: string, write: (sheet: Sheet) => Outcome): Working {
  const known = new Map<string, Quantity>();
  const values = new Map<string, Value>();
  const given: StepInput[] = [];
  const asGiven = new Set<string>();
  const steps: Step[] = [];
  const keep = (quantity: Quantity): void => {
    if (known.has(quantity.symbol)) throw new Error(`${quantity.symbol} is named twice.`);
    known.set(quantity.symbol, quantity);
    values.set(quantity.symbol, measured(quantity));
  };
  const knownBy = (symbol: string): Quantity => {
    const quantity = known.get(symbol);
    if (!quantity) throw new Error(`${symbol} was not found before it is used.`);
    return quantity;
  };
  const { answer, conclusion } = write({
    give: (quantity, from) => {
      const { value, meaning } = quantity;
      if (!Number.isFinite(value)) throw noNumber(value, meaning);
      keep(quantity);
      if (from !== 'found') asGiven.add(quantity.symbol);
      given.push({ ...quantity, digits: from === 'found' ? digitsOf(quantity) : givenDigits });
      return quantity.symbol;
    },
    find: ({ formula, rule, ...what }) => {
      const found = evaluate(formula, values);
      const result: Quantity = { ...what, value: numberIn(found, what.unit) };
      if (!Number.isFinite(result.value)) throw noNumber(result.value, what.meaning);
      const inputs = numericLine(formula, symbolsOf(formula).map(knownBy), asGiven, result);
      keep(result);
      values.set(result.symbol, found);
      steps.push({ kind: 'calculation', finds: what.meaning, formula, inputs, result, rule });
      return result.value;
    },
    has: (symbol) => known.has(symbol),
    value: (symbol) => knownBy(symbol).value,
    compare: ({ finds, left, relation, right, so, rule }) => {
      const [one, other] = [knownBy(left), knownBy(right)];
      const holds = isSo(one.value, relation, other.value);
      const written: Comparison = {
        kind: 'comparison',
        finds,
        left: one,
        relation: holds ? relation : opposite[relation],
        right: other,
        so: so(holds),
        rule,
      };
      steps.push(written);
      return holds;
    },
    table: ({ rows, ...what }) => {
      steps.push({
        kind: 'table',
        ...what,
        rows: rows.map(({ name, symbols }) => ({ name, cells: symbols.map(knownBy) })),
      });
    },
  });
  const last = steps.findLast((step) => step.kind === 'calculation');
  if (!last) throw new Error(`Nothing was worked out of “${title}”.`);
  return {
    title,
    given,
    steps,
    answer: answer === undefined ? last.result : knownBy(answer),
    ...(conclusion !== undefined && { conclusion }),
  };
}

function isSo(left: number, relation: Relation, right: number): boolean {
  switch (relation) {
    case '<':
      return left < right;
    case '≤':
      return left <= right;
    case '>':
      return left > right;
    case '≥':
      return left >= right;
    case '≈':
    case '≠':
      return (
        Math.abs(left - right) <= alike * Math.max(Math.abs(left), Math.abs(right)) ===
        (relation === '≈')
      );
  }
}

function noNumber(value: unknown, meaning: string): InputError {
  const shown = typeof value === 'number' ? `${value}` : 'none';
  return new InputError(
    value === undefined ? 'missing' : 'not-finite',
    meaning,
    `“${meaning}” is ${shown}; a working needs a finite number there.`,
  );
}
