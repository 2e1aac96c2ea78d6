import { InputError } from '../errors.js';
import { oneOf, text as textOf } from '../guard.js';
import type { Pascals } from '../units.js';
import { measureOf } from './parseMeasure.js';

/** What a pressure counts from: empty space, or the air around. */
export type PressureReference = 'absolute' | 'gauge';

/** A pressure and what it counts from. */
export interface ReadPressure {
  /** The pressure, Pa; of a gauge pressure below the air's it is negative. */
  readonly pascals: Pascals;
  /** What it counts from. */
  readonly reference: PressureReference;
}

const references = ['absolute', 'gauge'] as const;

/** How people say what a pressure counts from; a vacuum counts down from the air's pressure. */
const marks: readonly (readonly [mark: RegExp, reference: PressureReference, sign: 1 | -1])[] = [
  [/\s*\(?\b(?:abs(?:olute)?\.?|\(?a\))\)?$/i, 'absolute', 1],
  [/\s*\(?\b(?:gauge|gage|g\))\)?$/i, 'gauge', 1],
  [/\s*\(?\b(?:vacuum|vac\.?|below(?: ambient)?)\)?$/i, 'gauge', -1],
];

/**
 * Reads a pressure with what it counts from: `34 kPa absolute`, `−67 kPa gauge`, `20 inHg vacuum` (a gauge pressure below the air's). The same number is 67 kPa apart
 * one way and the other, so without a mark and without a told reference it is refused.
 *
 * @param text The pressure.
 * @param reference What the field is known to count from: taken where the text has no mark, and the only mark then taken. Nothing when left out.
 * @param path The field that is being read, for the error.
 * @throws InputError `gauge-or-absolute` where nothing says which, or the text says the other; what {@link parseMeasure} refuses; `negative` or
 * `zero` for an absolute pressure of 0 or less.
 *
 * @example
 * parsePressure('20 inHg vacuum').reference // => 'gauge'
 * parsePressure('20 inHg vacuum').pascals // => ≈ -67727.77
 * parsePressure('34 kPa', 'absolute') // => { pascals: 34000, reference: 'absolute' }
 */
export function parsePressure(
  text: string,
  reference?: PressureReference,
  path = 'value',
): ReadPressure {
  textOf(path, 'path');
  if (reference !== undefined) oneOf(reference, references, 'reference');
  const given = textOf(text, path).trim();
  const marked = marks.find(([mark]) => mark.test(given));
  const bare = marked ? given.replace(marked[0], '') : given;
  const size = measureOf(bare, 'pressure', path);
  const told = marked?.[1] ?? reference;
  const shown = given.length > 40 ? `${given.slice(0, 39)}…` : given;
  if (told === undefined) {
    throw new InputError(
      'gauge-or-absolute',
      path,
      `“${shown}” may be gauge or absolute; write “absolute”, “gauge” or “vacuum” behind it.`,
    );
  }
  if (reference !== undefined && told !== reference) {
    throw new InputError(
      'gauge-or-absolute',
      path,
      `“${shown}” is a ${told} pressure; here stands ${reference === 'gauge' ? 'a gauge' : 'an absolute'} pressure.`,
    );
  }
  const pascals = size * (marked?.[2] ?? 1);
  if (marked?.[2] === -1 && size < 0) {
    throw new InputError(
      'negative',
      path,
      `“${shown}” is a negative vacuum; write it without its sign, or as a gauge pressure.`,
    );
  }
  if (told === 'absolute' && pascals <= 0) {
    throw new InputError(
      pascals === 0 ? 'zero' : 'negative',
      path,
      `“${shown}” is no absolute pressure; it must be above 0 Pa.`,
    );
  }
  return { pascals, reference: told };
}
