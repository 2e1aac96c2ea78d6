import { InputError, isInputError } from '../errors.js';
import { oneOf, text as textOf } from '../guard.js';
import type { InputErrorCode } from '../inputErrorCode.js';
import { parseQuantity } from '../quantity/parseQuantity.js';
import { type MeasureKind, measureSpelling } from './measureSpelling.js';

/**
 * Reads a temperature, a temperature difference, a pressure or a height as people write it: °C, °F, K; Pa, hPa, kPa, mbar, bar, inHg, mmHg,
 * cmHg, psi; m, ft. Numbers are read as by {@link parseQuantity}. Nothing is taken for granted: a number without its unit is refused, as 20 may
 * be °C or °F. Of pressures it does not say whether they are absolute: see {@link parsePressure}.
 *
 * Method: units by their definitions, of which mercury's conventional density, 13 595.1 kg/m³, is from memory.
 *
 * @param text The measure, such as `68 °F`.
 * @param kind What is wanted.
 * @param path The field that is being read, for the error.
 * @returns °C, K, Pa or m.
 * @throws InputError `no-unit`, `unknown-unit`, and what {@link parseQuantity} refuses of a number.
 *
 * @example
 * parseMeasure('68 °F', 'temperature') // => ≈ 20
 * parseMeasure('1013,25 hPa', 'pressure') // => ≈ 101325
 * parseMeasure('1000 ft', 'length') // => ≈ 304.8
 */
export function parseMeasure(text: string, kind: MeasureKind, path = 'value'): number {
  textOf(path, 'path');
  oneOf(kind, Object.keys(measureSpelling) as MeasureKind[], 'kind');
  return measureOf(textOf(text, path), kind, path);
}

/** {@link parseMeasure} of a text that is one. */
export function measureOf(given: string, kind: MeasureKind, path: string): number {
  const { wanted, units } = measureSpelling[kind];
  const text = given.trim();
  const refuse = (code: InputErrorCode, wrong: string): never => {
    const shown = text.length > 40 ? `${text.slice(0, 39)}…` : text;
    throw new InputError(code, path, `“${shown}” ${wrong}; write ${wanted}.`);
  };
  const [, number = '', unit = ''] = /^([+\-−]?[\d .,\t\p{Zs}]*(?:[eE][+\-−]?\d{1,4})?)(.*)$/u.exec(
    text,
  )!;
  if (number.trim() === '') refuse(text === '' ? 'empty' : 'not-a-quantity', 'is no quantity');
  if (unit === '') refuse('no-unit', 'has no unit');
  const plain = unit.replaceAll(/[\s°]/g, '').replace('℃', 'C').toLowerCase();
  const found = units.find(
    ({ symbol, also }) => symbol.replace('°', '').toLowerCase() === plain || also.includes(plain),
  );
  if (!found) return refuse('unknown-unit', `has an unknown unit, “${unit.trim().slice(0, 20)}”`);
  const { factor, zero = 0 } = found;
  try {
    return factor * (parseQuantity(number, 'V', path) - zero);
  } catch (error) {
    if (!isInputError(error)) throw error;
    const sentence = error.message.replace(/; write a voltage.*$/, `; write ${wanted}.`);
    throw new InputError(error.code, path, sentence);
  }
}
