import { plainNumber } from './plainNumber.js';

/** A number as a drawing writes it, with a true minus sign. */
export function signedNumber(value: number): string {
  return plainNumber(value).replace('-', '\u2212');
}

/** A number of some significant digits with its unit, which takes no prefix. */
export function signedText(value: number, digits: number, unit: string): string {
  return `${signedNumber(Number(value.toPrecision(digits)))}${unit && `\u00a0${unit}`}`;
}
