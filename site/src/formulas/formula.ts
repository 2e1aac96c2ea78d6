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
  /** Addresses of the calculators and explanations that it stands behind, without slashes around them; they lead back to it. */
  readonly usedBy: readonly string[];
  readonly worked: {
    /** With which numbers. */
    readonly given: string;
    /** The formula with the numbers put in, and what that comes to bit by bit; each line has the value of the one before, within its rounding. */
    readonly steps: readonly string[];
    /** What the library gives with them. */
    readonly byLibrary: () => number;
    readonly unit?: QuantityUnit;
    /** Digits that are shown; 3 when left out. */
    readonly digits?: number;
  };
}

/** Formulas that belong together, on a page of their own. */
export interface FormulaGroup {
  /** The page's address, without slashes around it. */
  readonly path: string;
  readonly title: string;
  readonly formulas: readonly Formula[];
}
