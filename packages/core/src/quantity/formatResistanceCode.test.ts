import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { formatResistanceCode } from './formatResistanceCode.js';
import { parseQuantity } from './parseQuantity.js';

describe('formatResistanceCode', () => {
  // RKM code examples of IEC 60062, second-hand.
  it.each([
    [0.47, 'R47'],
    [4.7, '4R7'],
    [470, '470R'],
    [4700, '4K7'],
    [47000, '47K'],
    [47300, '47K3'],
    [470000, '470K'],
    [4.7e6, '4M7'],
  ])('writes %d Ω as %s', (ohms, code) => {
    expect(formatResistanceCode(ohms)).toBe(code);
  });

  // From memory.
  it.each([
    [0, '0R'],
    [0.01, 'R01'],
    [0.1, 'R10'],
    [1, '1R0'],
    [10, '10R'],
    [1000, '1K0'],
    [1e6, '1M0'],
    [4.7e9, '4G7'],
    [1e12, '1T0'],
    [0.0047, 'R0047'],
    [1234, '1K234'],
  ])('writes %d Ω as %s', (ohms, code) => {
    expect(formatResistanceCode(ohms)).toBe(code);
  });

  it.each([
    [-1, 'negative'],
    [Number.NaN, 'not-finite'],
    [Infinity, 'not-finite'],
    [1e15, 'out-of-range'],
  ])('refuses %d Ω as %s', (ohms, code) => {
    expect(() => formatResistanceCode(ohms)).toThrow(
      expect.objectContaining({ code, path: 'ohms' }),
    );
  });

  it.each([
    [4712.34, '4K712'],
    [0.00001, '0R'],
    [0.99999, '1R0'],
    [999_999, '1M0'],
    [999.99e12, '999T9'],
  ])('refuses %d Ω and offers %s', (ohms, nearest) => {
    expect(() => formatResistanceCode(ohms)).toThrow(
      expect.objectContaining({
        code: 'not-exact',
        message: expect.stringContaining(` ${nearest}.`),
      }),
    );
  });

  it('is read back exactly', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: -4, max: 11 }),
        (figures, power) => {
          const ohms = Number(`${figures}e${power}`);
          expect(parseQuantity(formatResistanceCode(ohms), 'Ω')).toBe(ohms);
        },
      ),
      { numRuns: 1000 * soak },
    );
  });
});
