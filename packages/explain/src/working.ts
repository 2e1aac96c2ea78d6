import type { Expression } from './expression.js';
import type { Quantity } from './quantity.js';

/** What a step rests on, and where that is published. */
export interface Rule {
  /** What it is called. */
  readonly name: string;
  /** Its source; `common practice, no source`, or `from memory` where it was not at hand. */
  readonly source: string;
}

/** A value is worked out. */
export interface Calculation {
  readonly kind: 'calculation';
  /** What is being found, in words. */
  readonly finds: string;
  /** The formula, in symbols. */
  readonly formula: Expression;
  /** What stands in the formula, with this case's values, in its order; those that an earlier step found in full digits. */
  readonly inputs: readonly StepInput[];
  /** What it comes to. */
  readonly result: Quantity;
  /** What it rests on. */
  readonly rule: Rule;
}

/** A value as it is written where it is given, or in a line of numbers. */
export interface StepInput extends Quantity {
  /** Significant digits that it is written with: in a line of numbers as many as make the line give the result as written; a whole number from 1 to 17. */
  readonly digits: number;
}

/** How two values stand to each other. */
export type Relation = '<' | '≤' | '>' | '≥' | '≈' | '≠';

/** Two values are held against each other. */
export interface Comparison {
  readonly kind: 'comparison';
  /** What is being found, in words. */
  readonly finds: string;
  /** The first value. */
  readonly left: Quantity;
  /** How it stands to the second. */
  readonly relation: Relation;
  /** The second value. */
  readonly right: Quantity;
  /** What follows from it, in words. */
  readonly so: string;
  /** What it rests on. */
  readonly rule: Rule;
}

/** Values side by side, such as an uncertainty budget. */
export interface Table {
  readonly kind: 'table';
  /** What it shows, in words. */
  readonly finds: string;
  /** The columns' headings. */
  readonly columns: readonly string[];
  /** A name, and a value for each further column. */
  readonly rows: readonly { readonly name: string; readonly cells: readonly Quantity[] }[];
  /** What it rests on. */
  readonly rule: Rule;
}

/** One step of a working. */
export type Step = Calculation | Comparison | Table;

/** A result worked out step by step, as plain data. */
export interface Working {
  /** What is worked out, in words. */
  readonly title: string;
  /** The values that it begins with. */
  readonly given: readonly StepInput[];
  /** What is done, one after the other. */
  readonly steps: readonly Step[];
  /** The last value. */
  readonly answer: Quantity;
  /** What follows, in words; left out where the answer says it. */
  readonly conclusion?: string;
}

/** What the steps rest on, each rule once. */
export function rulesOf(steps: readonly Step[]): readonly Rule[] {
  return [...new Map(steps.map(({ rule }) => [rule.name, rule])).values()];
}
