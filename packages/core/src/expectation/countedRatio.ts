import type { Fraction } from '../units.js';

/** A ratio of the reference as a whole count tells it, with the ratios that the count can stand for. */
export interface CountedRatio {
  /** The whole count, 0 to the converter's highest. */
  readonly count: number;
  /** The ratio that the count is read as, fraction of the reference. */
  readonly ratio: Fraction;
  /** The lowest ratio that gives this count, fraction of the reference. */
  readonly low: Fraction;
  /** The highest ratio that gives this count, fraction of the reference. */
  readonly high: Fraction;
}

/** Holds a fraction between 0 and 1. */
export function heldFraction(value: number): Fraction {
  return Math.min(1, Math.max(0, value));
}
