import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { InputError } from '../errors.js';
import { parseQuantity } from './parseQuantity.js';
import { type QuantityUnit, unitSpelling } from './unitSpelling.js';

function refusal(text: string, unit: QuantityUnit): InputError {
  try {
    parseQuantity(text, unit, 'limiter');
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error(`“${text}” was read`);
}

describe('parseQuantity', () => {
  // RKM code examples of IEC 60062, second-hand.
  it.each([
    ['R47', 0.47],
    ['4R7', 4.7],
    ['470R', 470],
    ['4K7', 4700],
    ['47K', 47e3],
    ['47K3', 47.3e3],
    ['470K', 470e3],
    ['4M7', 4.7e6],
  ])('reads the letter code %s', (text, ohms) => {
    expect(parseQuantity(text, 'Ω')).toBe(ohms);
  });

  // Ways of writing in the trade: common practice, no source.
  it.each<[string, QuantityUnit, number]>([
    ['4k7', 'Ω', 4700],
    ['4k7 Ω', 'Ω', 4700],
    ['4r7', 'Ω', 4.7],
    ['4Ω7', 'Ω', 4.7],
    ['470r', 'Ω', 470],
    ['0R', 'Ω', 0],
    ['4.7k', 'Ω', 4700],
    ['4.7 K', 'Ω', 4700],
    ['4,7 kΩ', 'Ω', 4700],
    ['4.7\u00a0k\u2126', 'Ω', 4700],
    ['4.7 kohm', 'Ω', 4700],
    ['4.7 k ohms', 'Ω', 4700],
    ['4.7 kilohms', 'Ω', 4700],
    ['10M', 'Ω', 10e6],
    ['10 MΩ', 'Ω', 10e6],
    ['10 megohm', 'Ω', 10e6],
    ['1m', 'Ω', 0.001],
    ['1 500', 'Ω', 1500],
    ['1\u202f500', 'Ω', 1500],
    ['1 000 000,5', 'Ω', 1000000.5],
    ['1.500', 'Ω', 1.5],
    ['1,50', 'Ω', 1.5],
    ['0,500', 'Ω', 0.5],
    ['1234,567', 'Ω', 1234.567],
    ['1e3', 'Ω', 1000],
    ['4.7E+3', 'Ω', 4700],
    ['1E3', 'Hz', 1000],
    ['5 V', 'V', 5],
    ['12v', 'V', 12],
    ['3V3', 'V', 3.3],
    ['500mV', 'V', 0.5],
    ['5', 'V', 5],
    ['.5 V', 'V', 0.5],
    ['-5 V', 'V', -5],
    ['\u22125 V', 'V', -5],
    ['+5 V', 'V', 5],
    ['20 \u00b5s', 's', 20e-6],
    ['20 \u03bcs', 's', 20e-6],
    ['20 us', 's', 20e-6],
    ['15 milliseconds', 's', 0.015],
    ['47nF', 'F', 47e-9],
    ['4n7', 'F', 4.7e-9],
    ['2\u00b52 F', 'F', 2.2e-6],
    ['5 mA', 'A', 0.005],
    ['5 milliamps', 'A', 0.005],
    ['0.25 W', 'W', 0.25],
    ['50 Hz', 'Hz', 50],
    ['1 kHz', 'Hz', 1000],
    ['5 %', '%', 0.05],
    ['5', '%', 0.05],
    ['2,5%', '%', 0.025],
    ['-1,5', '°', -1.5],
    ['2°', '°', 2],
    ['2 degrees', '°', 2],
    ['5 per cent', '%', 0.05],
    ['-0', 'V', 0],
  ])('reads “%s” in %s', (text, unit, value) => {
    expect(parseQuantity(text, unit)).toBe(value);
  });

  it('keeps milli and mega apart', () => {
    expect(parseQuantity('1 mΩ', 'Ω')).toBe(0.001);
    expect(parseQuantity('1 MΩ', 'Ω')).toBe(1e6);
    expect(parseQuantity('1 mohm', 'Ω')).toBe(0.001);
    expect(parseQuantity('1 Mohm', 'Ω')).toBe(1e6);
  });

  it('rounds once: the power of ten is shifted in the text', () => {
    expect(parseQuantity('4.7m', 'V')).toBe(0.0047);
    expect(parseQuantity('8.3 µs', 's')).toBe(8.3e-6);
    expect(parseQuantity('0.7 %', '%')).toBe(0.007);
    fc.assert(
      fc.property(fc.nat(999_999_999), fc.nat(9), (figures, places) => {
        const text = (figures / 10 ** places).toFixed(places);
        expect(parseQuantity(`${text} µV`, 'V')).toBe(Number(`${text}e-6`));
        expect(parseQuantity(`${text} MV`, 'V')).toBe(Number(`${text}e6`));
      }),
      { numRuns: 500 * soak },
    );
  });

  it.each<[string, QuantityUnit, string, string[]]>([
    ['', 'Ω', 'empty', ['4.7 kΩ']],
    ['  \u00a0', 'V', 'empty', ['5 V']],
    ['1,500', 'Ω', 'ambiguous-separator', ['1.500', '1500']],
    ['-1,500 kΩ', 'Ω', 'ambiguous-separator', ['-1.500 kΩ', '-1500 kΩ']],
    ['12,345 mV', 'V', 'ambiguous-separator', ['12.345 mV', '12345 mV']],
    ['1,500e3', 'Ω', 'ambiguous-separator', ['1.500e3', '1500e3']],
    ['1,500.5', 'Ω', 'thousands-separator', ['1500.5']],
    ['1.500,5', 'Ω', 'thousands-separator', ['1500.5']],
    ['1,500,000', 'Ω', 'thousands-separator', ['1500']],
    ['1.500.000', 'Ω', 'thousands-separator', ['1500']],
    ['15 00', 'Ω', 'misplaced-space', ['1500']],
    ['1500 000', 'Ω', 'misplaced-space', ['1500']],
    ['4 7', 'Ω', 'misplaced-space', ['1500']],
    ['4E7', 'Ω', 'ambiguous-exponent', ['4R7', '4e7']],
    ['5 V', 'Ω', 'wrong-unit', ['4.7 kΩ']],
    ['3V3', 'Ω', 'wrong-unit', ['4.7 kΩ']],
    ['4k7 V', 'Ω', 'wrong-unit', ['4.7 kΩ']],
    ['470R', 'V', 'wrong-unit', ['5 V']],
    ['5 ms', 'V', 'wrong-unit', ['5 V']],
    ['5 %', 'V', 'wrong-unit', ['5 V']],
    ['5 V', '%', 'wrong-unit', ['5 %']],
    ['5k', '%', 'unknown-unit', ['5 %']],
    ['5 m°', '°', 'unknown-unit', ['2°']],
    ['5 V', '°', 'wrong-unit', ['2°']],
    ['5 min', 's', 'unknown-unit', ['15 ms']],
    ['1m5', 's', 'unknown-unit', ['15 ms']],
    ['5 xV', 'V', 'unknown-unit', ['5 V']],
    ['5 S', 's', 'unknown-unit', ['15 ms']],
    ['5.', 'V', 'not-a-quantity', ['5 V']],
    ['kΩ', 'Ω', 'not-a-quantity', ['4.7 kΩ']],
    ['open', 'Ω', 'not-a-quantity', ['4.7 kΩ']],
    ['Infinity', 'Ω', 'not-a-quantity', ['4.7 kΩ']],
    ['NaN', 'Ω', 'not-a-quantity', ['4.7 kΩ']],
    ['0x10', 'Ω', 'unknown-unit', ['4.7 kΩ']],
    ['1e999', 'V', 'too-large', ['5 V']],
    ['1e-999', 'V', 'too-small', ['5 V']],
  ])('refuses “%s” in %s as %s and says what would be right', (text, unit, code, advice) => {
    const error = refusal(text, unit);
    expect(error.code).toBe(code);
    expect(error.path).toBe('limiter');
    for (const part of advice) expect(error.message).toContain(part);
  });

  it('reads any text or refuses it as InputError, never NaN', () => {
    const piece = fc.constantFrom(...'0123456789.,- eEkKmMRVΩ%x'.split(''));
    const units = Object.keys(unitSpelling) as QuantityUnit[];
    fc.assert(
      fc.property(
        fc.string({ unit: piece, maxLength: 8 }),
        fc.constantFrom(...units),
        (text, unit) => {
          try {
            expect(parseQuantity(text, unit)).toSatisfy(Number.isFinite);
          } catch (error) {
            if (!(error instanceof InputError)) throw error;
            expect(error.message).toMatch(/(write|meant)/);
          }
        },
      ),
      { numRuns: 2000 * soak },
    );
  });

  it('reads every example that a refusal offers', () => {
    for (const [unit, { wanted }] of Object.entries(unitSpelling)) {
      const examples = wanted.replace(/^.* such as /, '').split(/, | or /);
      for (const example of examples) {
        expect(parseQuantity(example, unit as QuantityUnit), example).toBeGreaterThan(0);
      }
    }
  });
});
