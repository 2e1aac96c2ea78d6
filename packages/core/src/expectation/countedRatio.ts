import type { Fraction } from '../units.js';

/** A ratio of the reference as a whole count tells it, with the ratios that the count can stand for. */
export interface CountedRatio {
  readonly count: number;
  readonly ratio: Fraction;
  readonly low: Fraction;
  readonly high: Fraction;
}

/** Holds a fraction between 0 and 1. */
export function heldFraction(value: number): Fraction {
  return Math.min(1, Math.max(0, value));
}
