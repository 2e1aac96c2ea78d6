import { createUnitClass } from 'mathjs';

/** A value with its unit, as far as the working needs it. */
export interface Measure {
  multiply(other: Measure): Measure | number;
  divide(other: Measure): Measure | number;
  pow(exponent: number): Measure | number;
  abs(): Measure;
  clone(): Measure;
  equalBase(other: Measure): boolean;
  toNumber(unit: string): number;
  /** In SI units without prefix. */
  value: number;
}

type MeasureClass = new (value: number | null, unit: string) => Measure;

// Its own declarations leave this out.
declare module 'mathjs' {
  const createUnitClass: (parts: object) => MeasureClass;
}

/** What stands for the number types that nothing here is of. */
class Other {}

/**
 * The unit class of mathjs for plain numbers. Its other types of number (large, complex, fractions), which `mathjs` puts into every page
 * that takes its units as they come, are four fifths of the weight.
 */
export const Measure = createUnitClass({
  config: { number: 'number', predictable: false },
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: (a: number, b: number) => a ** b,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (a: number, b: number) => a === b,
  isNumeric: (value: unknown) => typeof value === 'number',
  format: String,
  number: Number,
  Complex: Other,
  BigNumber: Other,
  Fraction: Other,
});
