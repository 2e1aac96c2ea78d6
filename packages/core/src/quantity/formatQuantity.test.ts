import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { InputError } from '../errors.js';
import { formatQuantity, type QuantityFormat } from './formatQuantity.js';
import { parseQuantity } from './parseQuantity.js';
import type { QuantityUnit } from './unitSpelling.js';

describe('formatQuantity', () => {
  it.each<[number, QuantityUnit, QuantityFormat, string]>([
    [4700, 'Ω', {}, '4.70 kΩ'],
    [4700, 'Ω', { trim: true }, '4.7 kΩ'],
    [47000, 'Ω', { trim: true }, '47 kΩ'],
    [100, 'Ω', { trim: true }, '100 Ω'],
    [470, 'Ω', { digits: 1 }, '500 Ω'],
    [470, 'Ω', { digits: 2 }, '470 Ω'],
    [0.9996, 'V', {}, '1.00 V'],
    [0.9994, 'V', {}, '999 mV'],
    [999.6, 'Ω', {}, '1.00 kΩ'],
    [999.6e-6, 's', { digits: 3 }, '1.00 ms'],
    [-0.0125, 'V', {}, '\u221212.5 mV'],
    [-0.0125, 'V', { decimal: ',' }, '\u221212,5 mV'],
    [0, 'V', {}, '0 V'],
    [-0, 'V', {}, '0 V'],
    [0, '%', {}, '0 %'],
    [20e-6, 's', { trim: true }, '20 \u00b5s'],
    [4.7e-9, 'F', {}, '4.70 nF'],
    [1e-12, 'F', {}, '1.00 pF'],
    [0.05, '%', {}, '5.00 %'],
    [0.05, '%', { trim: true }, '5 %'],
    [-1.5, '°', { trim: true }, '\u22121.5°'],
    [120, '°', { digits: 2 }, '120°'],
    [-0.123456, '%', { digits: 4 }, '\u221212.35 %'],
    [123.456, '%', {}, '12300 %'],
    [1e-5, '%', {}, '0.00100 %'],
    [1e-30, 'A', {}, '1.00e\u221230 A'],
    [1.5e20, 'Hz', { trim: true }, '1.5e20 Hz'],
    [1e-12, '%', {}, '1.00e\u221210 %'],
  ])('writes %d %s with %o as “%s”', (value, unit, options, text) => {
    expect(formatQuantity(value, unit, options)).toBe(text.replace(' ', '\u00a0'));
  });

  it.each([Number.NaN, Infinity, -Infinity])('refuses %d', (value) => {
    expect(() => formatQuantity(value, 'V')).toThrow(InputError);
  });

  it.each([0, 18, 2.5, Number.NaN])('refuses %d digits', (digits) => {
    expect(() => formatQuantity(1, 'V', { digits })).toThrow('whole number from 1 to 17');
  });

  const units = fc.constantFrom<QuantityUnit>('Ω', 'V', 'A', 'W', 's', 'F', 'Hz', '%', '°');
  const values = fc
    .double({ min: -1e200, max: 1e200, noNaN: true })
    .filter((x) => Math.abs(x) > 1e-200 || x === 0);
  const nearZero = fc
    .double({ min: -1e4, max: 1e4, noNaN: true })
    .filter((x) => Math.abs(x) > 1e-15);

  it('is read back within half of its last digit', () => {
    const digits = fc.integer({ min: 1, max: 17 });
    fc.assert(
      fc.property(
        fc.oneof(values, nearZero),
        units,
        digits,
        fc.boolean(),
        (value, unit, digits, trim) => {
          const back = parseQuantity(formatQuantity(value, unit, { digits, trim }), unit);
          const half = 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - digits + 1);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(
            half * (1 + 1e-9) + Math.abs(value) * 2 ** -52,
          );
        },
      ),
      { numRuns: 2000 * soak },
    );
  });

  it('is read back exactly from seventeen digits', () => {
    fc.assert(
      fc.property(fc.oneof(values, nearZero), units, (value, unit) => {
        expect(parseQuantity(formatQuantity(value, unit, { digits: 17 }), unit)).toBe(value + 0);
      }),
      { numRuns: 1000 * soak },
    );
  });

  it('with a decimal comma is read back or refused, never misread', () => {
    fc.assert(
      fc.property(nearZero, units, fc.integer({ min: 1, max: 7 }), (value, unit, digits) => {
        const point = formatQuantity(value, unit, { digits });
        const comma = formatQuantity(value, unit, { digits, decimal: ',' });
        if (/[1-9]\d{0,2},\d{3}(?!\d)/.test(comma) && !/\d{4,},/.test(comma)) {
          expect(() => parseQuantity(comma, unit)).toThrow('can be read as');
        } else {
          expect(parseQuantity(comma, unit)).toBe(parseQuantity(point, unit));
        }
      }),
      { numRuns: 1000 * soak },
    );
  });

  it('never writes 1000 or more before a prefixed unit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-11, max: 1e14, noNaN: true }),
        fc.integer({ min: 1, max: 5 }),
        (value, digits) => {
          expect(Number.parseFloat(formatQuantity(value, 'V', { digits }))).toBeLessThan(1000);
        },
      ),
      { numRuns: 1000 * soak },
    );
  });
});
