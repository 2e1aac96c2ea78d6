import type { QuantityUnit } from '@truesweep/core';

/** A formula as its page shows it. */
export interface Formula {
  readonly id: string;
  readonly title: string;
  /** TeX, typeset when the site is built. */
  readonly tex: string;
  /** Each symbol in TeX with what it stands for. */
  readonly where: readonly (readonly [symbol: string, meaning: string])[];
  /** When it holds, and what follows. */
  readonly says: string;
  /** Where it is published; `from memory` where that was not at hand. */
  readonly source: string;
  /** Functions of the library that it stands in. */
  readonly functions: readonly string[];
  readonly worked: {
    /** With which numbers. */
    readonly given: string;
    /** What the formula, written out, gives with them, and what the library gives. */
    readonly byFormula: () => number;
    readonly byLibrary: () => number;
    readonly unit?: QuantityUnit;
    /** Digits that are shown; 3 when left out. */
    readonly digits?: number;
  };
}

/** Formulas that belong together. */
export interface FormulaGroup {
  readonly title: string;
  readonly formulas: readonly Formula[];
}
