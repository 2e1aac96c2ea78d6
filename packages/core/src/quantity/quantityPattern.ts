import { oneOf } from '../guard.js';
import { prefixSymbols, prefixWordsRead } from './unitPower.js';
import { type QuantityUnit, takesPrefixes, unitSpelling } from './unitSpelling.js';

/** A space within a quantity, as `parseQuantity` reads it. */
const space = '[\\t\\p{Zs}]';
const sign = '[+\\-\u2212]?';
/** Signs that have two code points. */
const twins: Readonly<Record<string, string>> = { Ω: '[Ω\u2126]', µ: '[µ\u03bc]' };

/**
 * A regular expression (ECMA-262, with the flag `u`) for the texts that `parseQuantity` reads in a unit, too large and too small ones included:
 * for a definition in JSON Schema, which knows no other way to tell a quantity from a word.
 *
 * @param unit The unit wanted.
 * @param bare Whether a number without a unit is taken too; it is when left out.
 * @throws InputError `unknown-choice` for no unit.
 *
 * @example
 * const pattern = new RegExp(quantityPattern('Ω'), 'u');
 * ['4k7', '4.7 kΩ', '1,500', 'banana'].map((text) => pattern.test(text)) // => [true, true, false, false]
 */
export function quantityPattern(unit: QuantityUnit, bare = true): string {
  oneOf(unit, Object.keys(unitSpelling), 'unit');
  const number = numberPattern(unit);
  const suffix = `${space}*(?:${suffixes(unit).join('|')})`;
  const forms = [`${number}${bare ? `(?:${suffix})?` : suffix}`];
  if (unitSpelling[unit].coded) forms.push(codePattern(unit));
  return `^\\s*${sign}(?:${forms.join('|')})\\s*$`;
}

function numberPattern(unit: QuantityUnit): string {
  const notThousands = '(?![1-9]\\d{0,2},\\d{3}(?!\\d))';
  const whole = `(?:\\d{1,3}(?:${space}\\d{3})+|\\d+)`;
  const written = `${notThousands}(?:${whole}(?:[.,]\\d+)?|[.,]\\d+)`;
  // Of a resistance 4E7 can be 4.7 Ω or 40 MΩ.
  const notCode = unit === 'Ω' ? '(?!\\d+E\\d)' : '';
  return `${notCode}${written}(?:[eE]${sign}\\d{1,4})?`;
}

/** A letter in the place of the decimal sign, as in 4k7. */
function codePattern(unit: QuantityUnit): string {
  const letters = [...unitSpelling[unit].symbols, ...prefixSymbols()].filter((one) => one !== '');
  const own = [...unitSpelling[unit].symbols.map(spaced), ...unitSpelling[unit].words.map(anyCase)];
  const letter = `(?:${letters.map(spaced).join('|')})`;
  return `\\d*${letter}\\d+${space}*(?:${own.join('|')})?`;
}

function suffixes(unit: QuantityUnit): readonly string[] {
  const { symbols, words } = unitSpelling[unit];
  const prefixes = takesPrefixes(unit) ? prefixSymbols() : [''];
  const long = takesPrefixes(unit) ? prefixWordsRead() : [];
  return [
    ...prefixes.flatMap((prefix) => symbols.map((symbol) => spaced(prefix + symbol))),
    ...prefixes.flatMap((prefix) => words.map((word) => joined(spaced(prefix), anyCase(word)))),
    ...long.flatMap((prefix) => words.map((word) => anyCase(prefix + word))),
    ...prefixes.filter((prefix) => prefix !== '').map(spaced),
  ];
}

function joined(first: string, second: string): string {
  return first === '' ? second : `${first}${space}*${second}`;
}

/** Characters with spaces between them, each in all its forms. */
function spaced(text: string): string {
  return [...text].map((one) => twins[one] ?? one).join(`${space}*`);
}

function anyCase(word: string): string {
  const either = (one: string) => `[${one}${one.toUpperCase()}${one === 'k' ? '\u212a' : ''}]`;
  return [...word].map(either).join(`${space}*`);
}
