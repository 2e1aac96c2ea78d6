import { type InPlace, type Notation, notate } from './notation.js';
import type { Quantity } from './quantity.js';
import type { Calculation, Comparison } from './working.js';
import { digitsOf, mostDigits, usualDigits, writeQuantity } from './writeQuantity.js';

/** The two sides of a calculation's lines in one notation. */
export interface WrittenLines {
  /** What is found. */
  readonly symbol: string;
  /** The formula in symbols. */
  readonly formula: string;
  /** The formula with this case's numbers and units; left out where it says no more than the formula. */
  readonly numbers?: string;
  readonly result: string;
}

/** A calculation in one notation. */
export function writtenLines(
  { formula, inputs, result }: Calculation,
  notation: Notation,
  quantity: (text: string) => string,
): WrittenLines {
  const texts = new Map(
    inputs.map((one): [string, InPlace] => {
      const text = writeQuantity(one, one.digits, true);
      const isBare = one.unit === '1' && !text.includes('e');
      const kind = one.value < 0 ? 'negative' : isBare ? 'atom' : 'quantity';
      return [one.symbol, { text: quantity(text), kind }];
    }),
  );
  return {
    symbol: notation.symbol(result.symbol),
    formula: notate(formula, notation),
    ...(inputs.length > 0 && { numbers: notate(formula, notation, (name) => texts.get(name)!) }),
    result: quantity(writeResult(result)),
  };
}

/** A result with as many digits as are sensible; a whole number without decimals. */
export function writeResult(result: Quantity): string {
  const isCount = result.unit === '1' && Number.isInteger(result.value);
  return writeQuantity(result, digitsOf(result), isCount);
}

/** Both sides of a comparison, with enough digits to be told apart. */
export function comparedTexts({ left, relation, right }: Comparison): readonly [string, string] {
  for (let digits = usualDigits; ; digits++) {
    const texts = [left, right].map((one) => writeQuantity(one, digits, true)) as [string, string];
    if (texts[0] !== texts[1] || digits === mostDigits || relation === '≈') return texts;
  }
}
