import { evaluate, measured, numberIn, type Value } from './evaluate.js';
import { type Expression, symbolsOf } from './expression.js';
import { numericLine } from './numericLine.js';
import type { Quantity } from './quantity.js';
import type { Comparison, Relation, Rule, Step, Table, Working } from './working.js';

/** A value to find: its name, its unit and the formula. */
interface Find extends Omit<Quantity, 'value'> {
  readonly formula: Expression;
  readonly rule: Rule;
}

/** The steps of a working as they are written down. */
export interface Sheet {
  /** Names a value that is given; says its symbol. */
  give(quantity: Quantity): string;
  /** Works a value out by a formula of what is known already; says what it comes to. */
  find(what: Find): number;
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

const opposite: Readonly<Record<Relation, Relation>> = { '<': '≥', '≥': '<', '>': '≤', '≤': '>' };

/**
 * Works something out: `write` puts its steps onto a sheet. Values keep all their digits from step to step, their units go with them, and a
 * step whose formula gives another unit than it says throws.
 *
 * @param write Says what follows, in words, or nothing.
 */
export function workOut(title: string, write: (sheet: Sheet) => string | undefined): Working {
  const known = new Map<string, Quantity>();
  const values = new Map<string, Value>();
  const given: Quantity[] = [];
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
  const conclusion = write({
    give: (quantity) => {
      keep(quantity);
      given.push(quantity);
      return quantity.symbol;
    },
    find: ({ formula, rule, ...what }) => {
      const found = evaluate(formula, values);
      const result: Quantity = { ...what, value: numberIn(found, what.unit) };
      const asGiven = new Set(given.map(({ symbol }) => symbol));
      const inputs = numericLine(formula, symbolsOf(formula).map(knownBy), asGiven, result);
      keep(result);
      values.set(result.symbol, found);
      steps.push({ kind: 'calculation', finds: what.meaning, formula, inputs, result, rule });
      return result.value;
    },
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
    answer: last.result,
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
  }
}
