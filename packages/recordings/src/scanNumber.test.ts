import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soak } from '../../../tests/counts.js';
import { scanNumber } from './scanNumber.js';

function scan(text: string, decimal = '.', shift = 0): number {
  const bytes = new TextEncoder().encode(`x${text}y`);
  return scanNumber(bytes, 1, bytes.length - 1, decimal.charCodeAt(0), shift);
}

describe('scanNumber', () => {
  it.each([
    ['0', 0],
    ['-1.5', -1.5],
    ['+1.5', 1.5],
    ['.5', 0.5],
    ['5.', 5],
    ['1e3', 1000],
    ['1.5E-3', 0.0015],
    ['00012', 12],
    ['0.1', 0.1],
    ['123456789012345678', 123456789012345680],
    ['9007199254740993', 9007199254740992],
    ['1e23', 1e23],
    ['1e400', Infinity],
    ['-1e99999999999999999999999', -Infinity],
    ['1e-99999999999999999999999', 0],
    ['0e99999999999999999999999', 0],
  ])('reads %s', (text, value) => {
    expect(scan(text)).toBe(value);
  });

  it.each([
    '',
    '-',
    '.',
    '1.2.3',
    '1,5',
    'OL',
    'NaN',
    'Infinity',
    '1e',
    '1e+',
    '1e5x',
    '0x10',
    '1 2',
    '--1',
  ])('does not take “%s” for a number', (text) => {
    expect(scan(text)).toBeNaN();
  });

  it('takes the decimal sign that it is given', () => {
    expect(scan('1,5', ',')).toBe(1.5);
    expect(scan('1.5', ',')).toBeNaN();
  });

  it('shifts before it rounds', () => {
    expect(scan('1500', '.', -3)).toBe(1.5);
    expect(scan('0.7', '.', -3)).toBe(0.0007);
    expect(scan('8.3', '.', -6)).toBe(8.3e-6);
  });

  it('survives a field of a million digits', () => {
    expect(scan(`0.${'1'.repeat(1_000_000)}`)).toBe(1 / 9);
  });

  it('agrees with the language’s own reading of any decimal', () => {
    const texts = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
      fc.double({ min: -1000, max: 1000, noNaN: true }).map((x) => x.toFixed(6)),
      fc
        .tuple(fc.bigInt({ min: 0n, max: 10n ** 18n }), fc.integer({ min: -30, max: 30 }))
        .map(([figures, power]) => `${figures}e${power}`),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(0, -3, -6), (text, shift) => {
        const [mantissa, exponent = '0'] = text.split('e');
        expect(scan(text, '.', shift)).toBe(Number(`${mantissa}e${Number(exponent) + shift}`));
      }),
      { numRuns: 5000 * soak },
    );
  });
});
