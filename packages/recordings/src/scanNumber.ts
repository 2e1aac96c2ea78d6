/** Powers of ten that a double holds exactly. */
export const exactPowers = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
/** Mantissas below this are exact, and one figure more cannot make them inexact. */
export const largestMantissa = 1e15;

/** A power of ten beyond any double, however long its mantissa. */
const farPower = 1e9;
const decoder = new TextDecoder();

const plus = 0x2b;
const minus = 0x2d;
const zero = 0x30;

/**
 * Reads the decimal number that stands between two bytes, times ten to the power `shift`, as the
 * double nearest to it. Only digits, a sign, one decimal sign and an exponent are a number.
 *
 * Up to 15 figures and a power of ten up to 22 either way the result is one exact product or
 * quotient (Clinger 1990, How to read floating point numbers accurately: the fast case); beyond that
 * the text is handed to `Number` with the shifted exponent.
 *
 * @param decimal The decimal sign's byte.
 * @returns NaN where the bytes are not a number, ±Infinity where it is beyond the range of a double.
 */
export function scanNumber(
  bytes: Uint8Array,
  start: number,
  end: number,
  decimal: number,
  shift: number,
): number {
  let at = start;
  const sign = bytes[at];
  if (at < end && (sign === minus || sign === plus)) at += 1;
  let mantissa = 0;
  let figures = 0;
  let power = shift;
  let exact = true;
  let fraction = false;
  for (; at < end; at++) {
    const byte = bytes[at]!;
    const digit = byte - zero;
    if (digit >= 0 && digit <= 9) {
      exact &&= mantissa < largestMantissa / 10;
      mantissa = mantissa * 10 + digit;
      figures += 1;
      if (fraction) power -= 1;
    } else if (byte === decimal && !fraction) fraction = true;
    else break;
  }
  if (figures === 0) return Number.NaN;
  if (at < end) {
    const exponent = scanExponent(bytes, at, end);
    if (Number.isNaN(exponent)) return Number.NaN;
    power += exponent;
  }
  if (!exact || power < -22 || power > 22) return slowNumber(bytes, start, end, decimal, shift);
  const size = power < 0 ? mantissa / exactPowers[-power]! : mantissa * exactPowers[power]!;
  return sign === minus ? -size : size;
}

/** The exponent written from its letter on; NaN where it is none. */
function scanExponent(bytes: Uint8Array, start: number, end: number): number {
  if ((bytes[start]! | 0x20) !== 0x65) return Number.NaN;
  let at = start + 1;
  const sign = bytes[at];
  if (at < end && (sign === minus || sign === plus)) at += 1;
  if (at === end) return Number.NaN;
  let exponent = 0;
  for (; at < end; at++) {
    const digit = bytes[at]! - zero;
    if (digit < 0 || digit > 9) return Number.NaN;
    exponent = Math.min(exponent * 10 + digit, farPower);
  }
  return sign === minus ? -exponent : exponent;
}

/** Any well-formed number, by way of text. */
function slowNumber(
  bytes: Uint8Array,
  start: number,
  end: number,
  decimal: number,
  shift: number,
): number {
  const text = decoder.decode(bytes.subarray(start, end));
  const point = text.replace(String.fromCharCode(decimal), '.');
  const [mantissa = '', exponent = '0'] = point.toLowerCase().split('e');
  const power = Math.max(-farPower, Math.min(Number(exponent), farPower));
  return Number(`${mantissa}e${power + shift}`);
}
