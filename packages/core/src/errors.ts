/** Where in a text file an error lies; both counted from 1. */
export interface TextPlace {
  /** Line of the text, counted from 1. */
  readonly line: number;
  /** Character in the line, counted from 1. */
  readonly column: number;
}

/**
 * The only error thrown on purpose: an input was wrong.
 *
 * @param code Stable kebab-case name of the kind of mistake, for programs.
 * @param path The field that was wrong, such as `circuit.limiter`, or the file's name.
 * @param message One sentence: what was wrong and what would be right.
 * @param place Line and column, where the input was text.
 *
 * @example
 * const error = new InputError('negative', 'circuit.limiter', 'The limiter is −5 Ω; a resistance is 0 Ω or more.');
 * error.code // => 'negative'
 * error.path // => 'circuit.limiter'
 */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly code: string;
  readonly path: string;
  readonly place: TextPlace | undefined;

  constructor(code: string, path: string, message: string, place?: TextPlace) {
    super(message);
    this.code = code;
    this.path = path;
    this.place = place;
  }
}
