import { evaluate, measured, numberIn } from './evaluate.js';
import type { Expression } from './expression.js';
import type { Quantity } from './quantity.js';
import type { StepInput } from './working.js';
import { digitsOf, givenDigits, mostDigits, usualDigits, writeQuantity } from './writeQuantity.js';

/**
 * How many digits each value needs, so that who puts the printed numbers into the formula gets the printed result. Nothing is rounded but
 * what is printed.
 *
 * @param given The symbols whose values are given; those are printed as they came.
 */
export function numericLine(
  formula: Expression,
  inputs: readonly Quantity[],
  given: ReadonlySet<string>,
  result: Quantity,
): readonly StepInput[] {
  const wanted = writeQuantity(result, digitsOf(result));
  for (let digits = usualDigits; ; digits++) {
    const written = inputs.map((one) => ({
      ...one,
      digits: Math.max(digits, given.has(one.symbol) ? givenDigits : digitsOf(one)),
    }));
    const found = numberIn(
      evaluate(formula, new Map(written.map((one) => [one.symbol, measured(asWritten(one))]))),
      result.unit,
    );
    if (
      digits === mostDigits ||
      writeQuantity({ ...result, value: found }, digitsOf(result)) === wanted
    )
      return written;
  }
}

/** A value as it is printed. */
function asWritten({ digits, ...quantity }: StepInput): Quantity {
  return { ...quantity, value: Number(quantity.value.toPrecision(digits)) };
}
