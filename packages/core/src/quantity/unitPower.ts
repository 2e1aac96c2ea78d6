import { type QuantityUnit, takesPrefixes, unitSpelling } from './unitSpelling.js';

/** Powers of ten of the SI prefixes that are read; K is kilo as in IEC 60062, m is milli, M is mega. */
const prefixPowers: ReadonlyMap<string, number> = new Map([
  ['p', -12],
  ['n', -9],
  ['µ', -6],
  ['u', -6],
  ['m', -3],
  ['', 0],
  ['k', 3],
  ['K', 3],
  ['M', 6],
  ['G', 9],
  ['T', 12],
]);

/** Prefixes written out before a unit word; `kil` and `meg` are those of kilohm and megohm. */
const prefixWords: ReadonlyMap<string, number> = new Map([
  ['pico', -12],
  ['nano', -9],
  ['micro', -6],
  ['milli', -3],
  ['kilo', 3],
  ['kil', 3],
  ['mega', 6],
  ['meg', 6],
  ['giga', 9],
]);

/** The prefixes that are read, the empty one too, and those that are written out before a word. */
export const prefixSymbols = (): readonly string[] => [...prefixPowers.keys()];
export const prefixWordsRead = (): readonly string[] => [...prefixWords.keys()];

/** The power of ten of a prefix symbol standing alone; undefined where it is none. */
export function prefixPower(symbol: string): number | undefined {
  return prefixPowers.get(symbol);
}

/**
 * The power of ten that a named unit stands for, such as 3 for kΩ, kohm or kilohms; undefined where
 * the text does not name this unit. The text holds no spaces, and µ and Ω in one form each.
 */
export function unitPower(text: string, unit: QuantityUnit): number | undefined {
  const { symbols, words } = unitSpelling[unit];
  const powers = [
    ...symbols.map((symbol) => prefixPowers.get(before(symbol, text))),
    ...words.map((word) => wordPower(text, word)),
  ];
  const power = powers.find((candidate) => candidate !== undefined);
  if (takesPrefixes(unit)) return power;
  if (power !== 0) return undefined;
  return unit === '%' ? -2 : 0;
}

function wordPower(text: string, word: string): number | undefined {
  if (!text.toLowerCase().endsWith(word)) return undefined;
  const prefix = text.slice(0, text.length - word.length);
  return prefixPowers.get(prefix) ?? prefixWords.get(prefix.toLowerCase());
}

/** What stands before an ending; a text that is no prefix where the ending is missing. */
function before(ending: string, text: string): string {
  return text.endsWith(ending) ? text.slice(0, text.length - ending.length) : text + ending;
}
