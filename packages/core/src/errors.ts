import type { InputErrorCode } from './inputErrorCode.js';

/** Where in a text file an error lies; both counted from 1. */
export interface TextPlace {
  /** Line of the text, counted from 1. */
  readonly line: number;
  /** Character in the line, counted from 1. */
  readonly column: number;
}

/** One symbol for every copy of this module: a program may load one by `import` and another by `require`. */
const brand: unique symbol = Symbol.for('truesweep.InputError');

/**
 * The only error thrown on purpose: an input was wrong.
 *
 * @param code Stable kebab-case name of the kind of mistake, for programs: an {@link InputErrorCode}.
 * @param path The field that was wrong, such as `circuit.limiter`, or the file's name.
 * @param message One sentence: what was wrong and what would be right.
 * @param place Line and column, where the input was text.
 * @param options What caused it, as of any `Error`: what a getter of the input threw.
 *
 * @example
 * const error = new InputError('negative', 'circuit.limiter', 'The limiter is −5 Ω; a resistance is 0 Ω or more.');
 * error.code // => 'negative'
 * error.path // => 'circuit.limiter'
 */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly code: InputErrorCode;
  readonly path: string;
  readonly place: TextPlace | undefined;

  constructor(
    code: InputErrorCode,
    path: string,
    message: string,
    place?: TextPlace,
    options?: ErrorOptions,
  ) {
    super(message, options);
    this.code = code;
    this.path = path;
    this.place = place;
  }

  get [brand](): true {
    return true;
  }
}

/**
 * Whether a caught value is an {@link InputError}, of whichever copy of this package: one loaded by `import` and one by `require` have classes
 * of their own, between which `instanceof` is false.
 *
 * What a function that was handed in throws is the caller's own and comes through as it is; what a getter throws is the `cause` of an
 * `InputError` of the code `unreadable`.
 *
 * @example
 * let caught;
 * try {
 *   riseTime(-1);
 * } catch (error) {
 *   caught = error;
 * }
 * isInputError(caught) // => true
 * isInputError(new Error('disk full')) // => false
 */
export function isInputError(caught: unknown): caught is InputError {
  return caught instanceof Object && (caught as Partial<InputError>)[brand] === true;
}
