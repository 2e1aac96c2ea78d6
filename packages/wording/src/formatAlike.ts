import { formatQuantity, type QuantityUnit } from '@truesweep/core';

/**
 * Writes quantities that are to be compared with one prefix and one number of decimals: those that the largest
 * of them has by itself.
 *
 * @param values In the SI unit without prefix; fractions for `%`.
 * @param digits Significant digits of the largest value, 3 when left out.
 * @returns The numbers without the unit, and the unit with its prefix.
 *
 * @example
 * formatAlike([0.0985, 4.2, -0.5], 'V') // => { numbers: ['0.10', '4.20', '−0.50'], unit: 'V' }
 * formatAlike([0.001, 0.0075], 's') // => { numbers: ['1.00', '7.50'], unit: 'ms' }
 */
export function formatAlike(
  values: readonly number[],
  unit: QuantityUnit,
  digits = 3,
): { readonly numbers: readonly string[]; readonly unit: string } {
  const largest = Math.max(0, ...values.map(Math.abs));
  const [number = '', shownUnit = ''] = formatQuantity(largest, unit, { digits }).split(
    /\u00a0|(?=°)/,
  );
  const decimals = number.split('.')[1]?.length ?? 0;
  const power = largest === 0 ? 0 : Math.round(Math.log10(largest / Number(number)));
  const numbers = values.map((value) => {
    const written = Math.abs(value / 10 ** power).toFixed(decimals);
    return value < 0 && Number(written) > 0 ? `\u2212${written}` : written;
  });
  return { numbers, unit: shownUnit };
}
