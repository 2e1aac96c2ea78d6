import { InputError } from '../errors.js';
import { oneOf, text as textOf } from '../guard.js';
import type { InputErrorCode } from '../inputErrorCode.js';
import type { Fraction, Quantity } from '../units.js';
import { type DecimalNumeral, numeralValue } from './decimalNumeral.js';
import { prefixPower, unitPower } from './unitPower.js';
import { type QuantityUnit, takesPrefixes, unitSpelling } from './unitSpelling.js';

/** The number that a quantity written in a unit stands for: a fraction for `%`. */
export type ParsedQuantity<Unit extends QuantityUnit> = Unit extends '%'
  ? Fraction
  : Quantity<Unit>;

/** What is being read, for the sentences of refusals. */
interface Request {
  readonly text: string;
  readonly unit: QuantityUnit;
  readonly path: string;
}

/**
 * Reads a quantity as people write it and returns it in the SI unit without prefix; a percentage as
 * a fraction. The result is the double nearest to what was written.
 *
 * It reads letter codes (IEC 60062: `R47`, `4R7`, `4K7`, `4n7`; likewise `3V3`), SI prefixes (p n µ
 * or u m k M G T: m is milli, M is mega; K is kilo), the unit's symbol or word or neither, a decimal
 * point or comma, digits grouped by spaces (`1 500`), and exponents (`1e3`).
 *
 * It refuses what has two readings: `1,500` (1.5 or 1500) and, for a resistance, `4E7` (4.7 Ω or
 * 40 MΩ). Thousands marked by commas or points (`1,500.5`, `1.500.000`) are refused as well;
 * `1.500` is 1.5. It does not judge the range: −5 Ω is read as −5.
 *
 * @param text The quantity, such as `4.7 kΩ`.
 * @param unit The unit wanted; a number without a unit is taken to be in it (`5` in `%` is 0.05).
 * @param path The field that is being read, for the error.
 * @throws InputError `empty`, `not-a-quantity`, `ambiguous-separator`, `thousands-separator`,
 * `misplaced-space`, `ambiguous-exponent`, `wrong-unit`, `unknown-unit`, `too-large`, `too-small`.
 *
 * @example
 * parseQuantity('4k7', 'Ω') // => 4700
 * parseQuantity('4,7 kΩ', 'Ω') // => 4700
 * parseQuantity('500mV', 'V') // => 0.5
 * parseQuantity('5 %', '%') // => 0.05
 */
export function parseQuantity<Unit extends QuantityUnit>(
  text: string,
  unit: Unit,
  path = 'value',
): ParsedQuantity<Unit> {
  textOf(path, 'path');
  oneOf(unit, Object.keys(unitSpelling), 'unit');
  const request = { text: textOf(text, path).trim(), unit, path };
  const plain = oneForm(request.text);
  if (plain === '') refuse(request, 'empty', 'is no quantity');
  return (readCode(plain, request) ?? readNumber(plain, request)) as ParsedQuantity<Unit>;
}

/** One form of each sign that has several: spaces, minus, micro, ohm. */
function oneForm(text: string): string {
  return text
    .replace(/[\t\p{Zs}]/gu, ' ')
    .replace(/\u2212/g, '-')
    .replace(/\u03bc/g, '\u00b5')
    .replace(/\u2126/g, '\u03a9');
}

/** A letter in the place of the decimal sign, as in 4k7; undefined where the text is no such code. */
function readCode(plain: string, request: Request): number | undefined {
  const match = /^([+-]?)(\d*)([\p{L}])(\d+) *(\D.*)?$/u.exec(plain);
  const [, sign, whole = '', letter = '', parts = '', rest = ''] = match ?? [];
  if (!match || /e/i.test(letter) || !unitSpelling[request.unit].coded) return undefined;
  const shift = letterPower(letter, request);
  const suffix = rest.replaceAll(' ', '');
  if (suffix !== '' && unitPower(suffix, request.unit) !== 0) refuseUnit(suffix, request);
  const numeral = { sign: minus(sign), figures: whole + parts, power: -parts.length };
  return finish(numeral, shift, request);
}

function letterPower(letter: string, request: Request): number {
  const isUnit = unitSpelling[request.unit].symbols.includes(letter);
  return isUnit ? 0 : (prefixPower(letter) ?? refuseUnit(letter, request));
}

const numberThenUnit =
  /^([+-]?)(\d(?:[\d .,]*[\d.,])?|[.,]\d+)(?:([eE])([+-]?\d{1,4}))? *(\D.*)?$/u;

function readNumber(plain: string, request: Request): number {
  const match = numberThenUnit.exec(plain);
  if (!match) refuse(request, 'not-a-quantity', 'does not begin with a number');
  const [, sign, written = '', mark, exponent = '0', suffix = ''] = match;
  if (mark === 'E' && request.unit === 'Ω' && /^\d+$/.test(written + exponent)) {
    refuseExponent(written, exponent, request);
  }
  const places = decimalPlaces(written, request);
  const figures = written.replace(/\D/g, '');
  const numeral = { sign: minus(sign), figures, power: Number(exponent) - places };
  return finish(numeral, suffixPower(suffix.replaceAll(' ', ''), request), request);
}

function minus(sign: string | undefined): '' | '-' {
  return sign === '-' ? '-' : '';
}

/** How many of the digits follow the decimal sign; refuses grouping that cannot be told from it. */
function decimalPlaces(written: string, request: Request): number {
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) refuseComma(request);
  const match = /^(?:\d*|\d{1,3}(?: \d{3})+)(?:[.,](\d+))?$/.exec(written);
  if (match) return match[1]?.length ?? 0;
  const ungrouped = 'write the digits without grouping, such as 1500 or 1500.5';
  if (written.replace(/[^.,]/g, '').length > 1) {
    refuse(request, 'thousands-separator', 'has more than one comma or point', ungrouped);
  }
  if (written.includes(' ')) {
    refuse(request, 'misplaced-space', 'has spaces that do not part groups of three', ungrouped);
  }
  return refuse(request, 'not-a-quantity', 'has no digit after its decimal sign');
}

function suffixPower(suffix: string, request: Request): number {
  const { unit } = request;
  if (suffix === '') return unit === '%' ? -2 : 0;
  const bare = takesPrefixes(unit) ? prefixPower(suffix) : undefined;
  return bare ?? unitPower(suffix, unit) ?? refuseUnit(suffix, request);
}

function finish(numeral: DecimalNumeral, shift: number, request: Request): number {
  const value = numeralValue(numeral, shift);
  if (!Number.isFinite(value)) refuse(request, 'too-large', 'is too large to be computed with');
  if (value === 0 && /[1-9]/.test(numeral.figures)) {
    refuse(request, 'too-small', 'is too small to be told from 0');
  }
  return value;
}

function refuseUnit(suffix: string, request: Request): never {
  const units = Object.keys(unitSpelling) as QuantityUnit[];
  const named = units.find((unit) => unitPower(suffix, unit) !== undefined);
  if (named !== undefined && named !== request.unit) {
    refuse(request, 'wrong-unit', `is in ${named}, not in ${request.unit}`);
  }
  return refuse(request, 'unknown-unit', `has an unknown unit, “${shortened(suffix)}”`);
}

function refuseComma(request: Request): never {
  const decimal = request.text.replace(',', '.');
  const thousands = request.text.replace(',', '');
  const wrong = `can be read as ${decimal} or as ${thousands}`;
  refuse(request, 'ambiguous-separator', wrong, 'write the one that is meant, without a comma');
}

function refuseExponent(whole: string, exponent: string, request: Request): never {
  const wrong = `can be read as ${whole}R${exponent} (${whole}.${exponent} Ω) or as ${whole}e${exponent} Ω`;
  refuse(request, 'ambiguous-exponent', wrong, 'write the one that is meant');
}

function refuse(
  { text, unit, path }: Request,
  code: InputErrorCode,
  wrong: string,
  right = `write ${unitSpelling[unit].wanted}`,
): never {
  throw new InputError(code, path, `“${shortened(text)}” ${wrong}; ${right}.`);
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
