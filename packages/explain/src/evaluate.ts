import type { Expression, FunctionName } from './expression.js';
import { normalProbability } from './normalProbability.js';
import { type Quantity, unitNames, type WorkingUnit } from './quantity.js';
import { Measure } from './unit.js';

/** A plain number, or a value with its unit. */
export type Value = number | Measure;

/** A value with its unit, or the plain number where it has none. */
export function measured({ value, unit }: Pick<Quantity, 'value' | 'unit'>): Value {
  const name = unitNames[unit];
  return name === '' ? value : new Measure(value, name);
}

/**
 * The number of a value in a unit.
 *
 * @throws Error where it is of another kind: a formula that gives amperes where volts are wanted is wrong.
 */
export function numberIn(value: Value, unit: WorkingUnit): number {
  const name = unitNames[unit];
  if (typeof value === 'number') {
    if (name !== '') throw new Error(`A plain number was found where ${unit} is wanted.`);
    return value;
  }
  if (name === '' || !value.equalBase(new Measure(null, name)))
    throw new Error(`${value} was found where ${unit === '1' ? 'a number' : unit} is wanted.`);
  // Coherent units need no factor, which would round.
  return unit.includes('°') && unit !== '°C' ? value.toNumber(name) : value.value;
}

/**
 * The value of a formula, its units carried through every operation.
 *
 * @param values Those of its symbols.
 * @throws Error where units don't fit: volts added to ohms, a logarithm of amperes.
 */
export function evaluate(expression: Expression, values: ReadonlyMap<string, Value>): Value {
  const of = (part: Expression): Value => evaluate(part, values);
  if ('number' in expression) return expression.number;
  if ('symbol' in expression) {
    const value = values.get(expression.symbol);
    if (value === undefined)
      throw new Error(`${expression.symbol} was not found before it is used.`);
    return value;
  }
  if ('sum' in expression) return expression.sum.map(of).reduce(added);
  if ('negative' in expression) return times(-1, of(expression.negative));
  if ('product' in expression) return expression.product.map(of).reduce(times);
  if ('quotient' in expression) {
    const [above, below] = expression.quotient;
    return over(of(above), of(below));
  }
  if ('power' in expression) {
    const [base, exponent] = expression.power;
    return raised(of(base), plain(of(exponent), 'an exponent'));
  }
  if ('root' in expression) return raised(of(expression.root), 0.5);
  return called(expression.call, expression.of.map(of));
}

function added(one: Value, other: Value): Value {
  if (typeof one === 'number' && typeof other === 'number') return one + other;
  if (typeof one === 'number' || typeof other === 'number' || !one.equalBase(other))
    throw new Error(`${one} and ${other} are added; their units differ.`);
  return withValue(one, one.value + other.value);
}

function times(one: Value, other: Value): Value {
  if (typeof one === 'number')
    return typeof other === 'number' ? one * other : withValue(other, one * other.value);
  return typeof other === 'number' ? withValue(one, one.value * other) : one.multiply(other);
}

function over(above: Value, below: Value): Value {
  if (typeof below === 'number')
    return typeof above === 'number' ? above / below : withValue(above, above.value / below);
  if (typeof above !== 'number') return above.divide(below);
  const inverse = below.pow(-1) as Measure;
  return withValue(inverse, above / below.value);
}

function raised(base: Value, exponent: number): Value {
  if (typeof base === 'number') return exponent === 0.5 ? Math.sqrt(base) : base ** exponent;
  const found = base.pow(exponent);
  if (typeof found === 'number' || exponent !== 0.5) return found;
  return withValue(found, Math.sqrt(base.value));
}

function withValue(measure: Measure, value: number): Measure {
  const changed = measure.clone();
  changed.value = value;
  return changed;
}

function plain(value: Value, what: string): number {
  if (typeof value === 'number') return value;
  throw new Error(`${value} is ${what}; it must be a plain number.`);
}

const ofNumbers: Readonly<
  Record<Exclude<FunctionName, 'abs' | 'min' | 'max'>, (x: number) => number>
> = {
  ln: Math.log,
  exp: Math.exp,
  Φ: normalProbability,
  round: Math.round,
  ceil: Math.ceil,
};

function called(name: FunctionName, values: readonly Value[]): Value {
  const [first] = values as readonly [Value];
  if (name === 'abs') return typeof first === 'number' ? Math.abs(first) : first.abs();
  if (name === 'min' || name === 'max') {
    const size = (value: Value) => (typeof value === 'number' ? value : value.value);
    // The sum of all refuses units that differ.
    values.reduce(added);
    return values.reduce((best, one) =>
      (name === 'min' ? size(one) < size(best) : size(one) > size(best)) ? one : best,
    );
  }
  return ofNumbers[name](plain(first, `in a ${name}`));
}
