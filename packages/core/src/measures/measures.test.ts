import { describe, expect, test } from 'vitest';
import { isInputError } from '../errors.js';
import { formatMeasure } from './formatMeasure.js';
import { parseMeasure } from './parseMeasure.js';
import { parsePressure } from './parsePressure.js';

const codeOf = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return error.code;
    throw error;
  }
  return 'none';
};

describe('parseMeasure', () => {
  test.each([
    ['20 °C', 'temperature', 20],
    ['20C', 'temperature', 20],
    ['−40 °F', 'temperature', -40],
    ['212°F', 'temperature', 100],
    ['68 deg F', 'temperature', 20],
    ['273.15 K', 'temperature', 0],
    ['21 ℃', 'temperature', 21],
    ['1 °F', 'temperature-difference', 5 / 9],
    ['0,5 K', 'temperature-difference', 0.5],
    // Conventional inch and millimetre of mercury, pound per square inch: NIST SP 811 (2008), table B.8 (from memory).
    ['1 inHg', 'pressure', 3386.389],
    ['760 mmHg', 'pressure', 101_325],
    ['1 psi', 'pressure', 6894.757],
    ['29.92 "Hg', 'pressure', 101_320.7],
    ['1013 mbar', 'pressure', 101_300],
    ['1 013.25 hPa', 'pressure', 101_325],
    ['40 cmHg', 'pressure', 53_328.95],
    ['1000 ft', 'length', 304.8],
  ] as const)('%s', (text, kind, value) => {
    expect(parseMeasure(text, kind)).toBeCloseTo(value, value > 1e4 ? 0 : 3);
  });

  test.each([
    ['20', 'temperature', 'no-unit'],
    ['', 'temperature', 'empty'],
    ['warm', 'temperature', 'not-a-quantity'],
    ['20 V', 'temperature', 'unknown-unit'],
    ['1,013 hPa', 'pressure', 'ambiguous-separator'],
    ['1.013.2 hPa', 'pressure', 'thousands-separator'],
    ['20 mK', 'temperature', 'unknown-unit'],
  ] as const)('%s is refused', (text, kind, code) => {
    expect(codeOf(() => parseMeasure(text, kind))).toBe(code);
  });

  test('a refusal says what would be right', () => {
    expect(() => parseMeasure('1.013.2 hPa', 'pressure')).toThrow(/without grouping/);
    expect(() => parseMeasure('. °C', 'temperature')).toThrow(/write a temperature with its unit/);
  });
});

describe('parsePressure', () => {
  test.each([
    ['34 kPa absolute', 34_000, 'absolute'],
    ['34 kPa (abs)', 34_000, 'absolute'],
    ['34 kPa abs.', 34_000, 'absolute'],
    ['34 kPa(a)', 34_000, 'absolute'],
    ['−67 kPa gauge', -67_000, 'gauge'],
    ['−67 kPa (g)', -67_000, 'gauge'],
    ['67 kPa vacuum', -67_000, 'gauge'],
  ] as const)('%s', (text, pascals, reference) => {
    expect(parsePressure(text)).toEqual({ pascals, reference });
  });

  test('without a mark nothing says which', () => {
    // A published service page applies “67 kPa(abs)” and expects 23 to 38 kPa absolute: 67 kPa is the gauge vacuum.
    expect(codeOf(() => parsePressure('67 kPa'))).toBe('gauge-or-absolute');
    expect(parsePressure('67 kPa', 'absolute').pascals).toBe(67_000);
    expect(codeOf(() => parsePressure('67 kPa vacuum', 'absolute'))).toBe('gauge-or-absolute');
    expect(codeOf(() => parsePressure('−5 kPa absolute'))).toBe('negative');
    expect(codeOf(() => parsePressure('0 kPa', 'absolute'))).toBe('zero');
    expect(codeOf(() => parsePressure('−5 kPa vacuum'))).toBe('negative');
  });
});

describe('formatMeasure', () => {
  test.each([
    [20, '°C', 0, '20 °C'],
    [-0.04, '°C', 1, '0.0 °C'],
    [1.5, 'K', 1, '1.5 K'],
    [5, '°F', 0, '41 °F'],
    [53_330, 'inHg', 1, '15.7 inHg'],
    [304.8, 'ft', 0, '1000 ft'],
  ] as const)('%d in %s', (value, unit, places, text) => {
    expect(formatMeasure(value, unit, places)).toBe(text);
  });
});
