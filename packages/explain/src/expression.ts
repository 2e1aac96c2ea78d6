/** A formula as plain data: numbers, symbols, and what is done with them. */
export type Expression =
  | {
      /** A number of the formula itself, without unit; any finite one. */
      readonly number: number;
    }
  | {
      /** A symbol whose value is given or was found by an earlier step. */
      readonly symbol: string;
    }
  | {
      /** What is added; a part that is taken off is a `negative` one. */
      readonly sum: readonly Expression[];
    }
  | {
      /** What is taken with the other sign. */
      readonly negative: Expression;
    }
  | {
      /** What is multiplied. */
      readonly product: readonly Expression[];
    }
  | {
      /** What is above the line and what is below it. */
      readonly quotient: readonly [Expression, Expression];
    }
  | {
      /** A base and its exponent. */
      readonly power: readonly [Expression, Expression];
    }
  | {
      /** What the square root is taken of. */
      readonly root: Expression;
    }
  | {
      /** A function of numbers without unit, but for `abs`, `min` and `max`, which take any. */
      readonly call: FunctionName;
      /** What it is a function of. */
      readonly of: readonly Expression[];
    };

/** Natural logarithm and exponential, a normal variable's probability to lie below, rounding, size, least and largest. */
export type FunctionName = (typeof functionNames)[number];

export const functionNames = ['ln', 'exp', 'Φ', 'round', 'ceil', 'abs', 'min', 'max'] as const;

/** A part of a formula as one writes it: a symbol's name, a number or a formula. */
export type Operand = Expression | string | number;

function expressionOf(operand: Operand): Expression {
  if (typeof operand === 'string') return { symbol: operand };
  return typeof operand === 'number' ? { number: operand } : operand;
}

const all = (operands: readonly Operand[]) => operands.map(expressionOf);

/** a + b + …; of a single one that itself. */
export function sum(...operands: readonly Operand[]): Expression {
  return operands.length === 1 ? expressionOf(operands[0]!) : { sum: all(operands) };
}

/** a − b − … */
export function difference(first: Operand, ...others: readonly Operand[]): Expression {
  return { sum: [expressionOf(first), ...others.map(negative)] };
}

/** −a */
export function negative(operand: Operand): Expression {
  return { negative: expressionOf(operand) };
}

/** a · b · …; of a single one that itself. */
export function product(...operands: readonly Operand[]): Expression {
  return operands.length === 1 ? expressionOf(operands[0]!) : { product: all(operands) };
}

/** a / b */
export function quotient(above: Operand, below: Operand): Expression {
  return { quotient: [expressionOf(above), expressionOf(below)] };
}

/** a to the power of b. */
export function power(base: Operand, exponent: Operand): Expression {
  return { power: [expressionOf(base), expressionOf(exponent)] };
}

/** The square root. */
export function root(operand: Operand): Expression {
  return { root: expressionOf(operand) };
}

/** A function of one value or several. */
export function call(name: FunctionName, ...of: readonly Operand[]): Expression {
  return { call: name, of: all(of) };
}

/** The symbols of a formula, each once, in the order in which they stand there. */
export function symbolsOf(expression: Expression): readonly string[] {
  return [...new Set(namesIn(expression))];
}

function namesIn(expression: Expression): readonly string[] {
  if ('symbol' in expression) return [expression.symbol];
  return partsOf(expression).flatMap(namesIn);
}

function partsOf(expression: Expression): readonly Expression[] {
  if ('sum' in expression) return expression.sum;
  if ('negative' in expression) return [expression.negative];
  if ('product' in expression) return expression.product;
  if ('quotient' in expression) return expression.quotient;
  if ('power' in expression) return expression.power;
  if ('root' in expression) return [expression.root];
  return 'call' in expression ? expression.of : [];
}
