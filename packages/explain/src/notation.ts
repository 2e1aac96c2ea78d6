import type { Expression, FunctionName } from './expression.js';

/** How formulas are written: as text, as MathML or as LaTeX. */
export interface Notation {
  readonly number: (value: number) => string;
  readonly symbol: (name: string) => string;
  /** Parts in a row, with a sign between each two and before the first where that is negative. */
  readonly sum: (
    parts: readonly { readonly text: string; readonly isNegative: boolean }[],
  ) => string;
  readonly product: (parts: readonly string[]) => string;
  readonly quotient: (above: string, below: string) => string;
  /** Whether a quotient shows by itself what is above and below, so that it needs no parentheses. */
  readonly drawsFractions: boolean;
  readonly power: (base: string, exponent: string) => string;
  readonly root: (text: string) => string;
  readonly call: (name: FunctionName, parts: readonly string[]) => string;
  readonly parentheses: (text: string) => string;
}

/** Writes a sum on a line, with a minus sign of the notation's. */
export const sumOnLine =
  (minus: string): Notation['sum'] =>
  (parts) =>
    parts
      .map(({ text, isNegative }, i) =>
        i === 0 ? (isNegative ? minus : '') + text : ` ${isNegative ? minus : '+'} ${text}`,
      )
      .join('');

/** How strongly an expression holds together: what is weaker than its place asks stands in parentheses. */
const ranks = { sum: 1, product: 2, power: 3, atom: 4 } as const;

interface Written {
  readonly text: string;
  readonly rank: number;
}

/** What stands for a symbol, and whether it needs parentheses as a negative value does. */
export interface InPlace {
  readonly text: string;
  /** A number with its unit, or with a sign, is no base of a power and a negative one no part of a product. */
  readonly kind: 'atom' | 'quantity' | 'negative';
}

const rankOf: Readonly<Record<InPlace['kind'], number>> = {
  atom: ranks.atom,
  quantity: ranks.product,
  negative: ranks.sum,
};

/** Writes a formula, with what `inPlace` gives for its symbols. */
export function notate(
  expression: Expression,
  notation: Notation,
  inPlace: (name: string) => InPlace = (name) => ({ text: notation.symbol(name), kind: 'atom' }),
): string {
  const write = (part: Expression): Written => {
    const at = (one: Expression, least: number): string => {
      const { text, rank } = write(one);
      return rank < least ? notation.parentheses(text) : text;
    };
    if ('number' in part) {
      const rank = part.number < 0 ? ranks.sum : ranks.atom;
      return { text: notation.number(part.number), rank };
    }
    if ('symbol' in part) {
      const { text, kind } = inPlace(part.symbol);
      return { text, rank: rankOf[kind] };
    }
    if ('sum' in part || 'negative' in part) {
      const parts = 'sum' in part ? part.sum : [part];
      const signed = parts.map((one, i) =>
        'negative' in one
          ? { text: at(one.negative, ranks.product), isNegative: true }
          : { text: at(one, i === 0 ? ranks.sum : ranks.product), isNegative: false },
      );
      return { text: notation.sum(signed), rank: ranks.sum };
    }
    if ('product' in part) {
      // What follows a fraction on one line is easily read as below it.
      const last = part.product.length - 1;
      const isOnLine = (one: Expression, i: number) =>
        'quotient' in one && i < last && !notation.drawsFractions;
      const texts = part.product.map((one, i) =>
        at(one, isOnLine(one, i) ? ranks.power : ranks.product),
      );
      return { text: notation.product(texts), rank: ranks.product };
    }
    if ('quotient' in part) {
      const [above, below] = part.quotient;
      const { drawsFractions } = notation;
      const text = notation.quotient(
        at(above, drawsFractions ? 0 : ranks.product),
        // “5 V / 2 kΩ” is read as meant; a product below the line isn't.
        at(below, drawsFractions ? 0 : 'symbol' in below ? ranks.product : ranks.power),
      );
      return { text, rank: drawsFractions ? ranks.power : ranks.product };
    }
    if ('power' in part) {
      const [base, exponent] = part.power;
      return {
        text: notation.power(at(base, ranks.atom), write(exponent).text),
        rank: ranks.power,
      };
    }
    if ('root' in part) return { text: notation.root(write(part.root).text), rank: ranks.atom };
    const parts = part.of.map((one) => write(one).text);
    return { text: notation.call(part.call, parts), rank: ranks.atom };
  };
  return write(expression).text;
}
