import { InputError } from '../errors.js';
import { type FieldRules, listOf } from '../fields.js';
import { between, text } from '../guard.js';

/** One input of a measurement: how the result answers to it, and how uncertain it is. */
export interface UncertainInput<Name extends string = string> {
  /** What it is called; each once. */
  readonly name: Name;
  /** Partial derivative of the result by this input, in the result's unit per the input's; any finite number. */
  readonly sensitivity: number;
  /** Standard uncertainty of the input, in its unit, 0 or more. */
  readonly uncertainty: number;
  /** Degrees of freedom of that uncertainty, a number above 0; unlimited when left out. */
  readonly degreesOfFreedom?: number;
}

/** What an input adds: |sensitivity| × uncertainty, in the unit of the result. */
export interface Contribution<Name extends string = string> {
  /** The input's name. */
  readonly name: Name;
  /** What it adds, in the unit of the result, 0 or more. */
  readonly uncertainty: number;
}

/** A combined standard uncertainty with what it is made of, largest first. */
export interface CombinedUncertainty<Name extends string = string> {
  /** The combined standard uncertainty, in the unit of the result, 0 or more. */
  readonly uncertainty: number;
  /** Effective degrees of freedom, a number above 0; left out where they are unlimited. */
  readonly degreesOfFreedom?: number;
  /** What each input adds, largest first. */
  readonly contributions: readonly Contribution<Name>[];
}

/** Correlation coefficient of two inputs, −1 to 1, by their names in either order. */
export type Correlation = readonly [one: string, other: string, coefficient: number];

const most = 1e100;

const inputRules: FieldRules = {
  name: text,
  sensitivity: between(-most, most),
  uncertainty: between(0, most),
  'degreesOfFreedom?': (value, path) => {
    if (value !== Infinity) between(1e-9, most)(value, path);
  },
};

function checkCorrelation(value: unknown, path: string): void {
  listOf(() => {}, 3, 3)(value, path);
  const [one, other, coefficient] = value as unknown[];
  text(one, `${path}[0]`);
  text(other, `${path}[1]`);
  between(-1, 1)(coefficient, path);
}

/**
 * The law of propagation of uncertainty with the Welch–Satterthwaite formula.
 *
 * Method: JCGM 100:2008 (GUM), equations 10 and 13 for the uncertainty, G.2b for the degrees of freedom.
 *
 * @param inputs Sensitivities and standard uncertainties, 0 or more.
 * @param correlations Of inputs that are not independent.
 * @throws InputError for a number that is not finite, a negative uncertainty or an unknown name.
 *
 * @example
 * const sum = combineUncertainties([
 *   { name: 'a', sensitivity: 1, uncertainty: 3 },
 *   { name: 'b', sensitivity: -2, uncertainty: 2 },
 * ]);
 * sum.uncertainty // => 5
 * sum.contributions[0] // => { name: 'b', uncertainty: 4 }
 */
export function combineUncertainties<Name extends string>(
  inputs: readonly UncertainInput<Name>[],
  correlations: readonly Correlation[] = [],
): CombinedUncertainty<Name> {
  listOf(inputRules)(inputs, 'inputs');
  listOf(checkCorrelation)(correlations, 'correlations');
  // In parts of the largest contribution, so that no square over- or underflows.
  const parts = inputs.map(({ sensitivity, uncertainty }) => sensitivity * uncertainty);
  const largest = parts.reduce((most, part) => Math.max(most, Math.abs(part)), 0) || 1;
  const partOf = (name: string, path: string): number => {
    const at = inputs.findIndex((one) => one.name === name);
    if (at >= 0) return parts[at]! / largest;
    throw new InputError(
      'unknown-name',
      path,
      `${path} names ${name}, which is none of the inputs.`,
    );
  };
  let variance = 0;
  let shares = 0;
  inputs.forEach(({ degreesOfFreedom }, i) => {
    const part = (parts[i]! / largest) ** 2;
    variance += part;
    if (degreesOfFreedom !== undefined) shares += part ** 2 / degreesOfFreedom;
  });
  correlations.forEach(([one, other, coefficient], i) => {
    const path = `correlations[${i}]`;
    variance += 2 * partOf(one, path) * partOf(other, path) * coefficient;
  });
  const contributions = inputs
    .map(({ name }, i) => ({ name, uncertainty: Math.abs(parts[i]!) }))
    .sort((a, b) => b.uncertainty - a.uncertainty);
  return {
    uncertainty: largest * Math.sqrt(Math.max(0, variance)),
    ...(shares > 0 && { degreesOfFreedom: variance ** 2 / shares }),
    contributions,
  };
}
