import { formatQuantity, listOf, type QuantityUnit } from '@truesweep/core';
import { number } from './say.js';

/**
 * Writes quantities that are to be compared with one prefix and one number of decimals: those that the largest
 * of them has by itself; where it has none, for it is beyond every prefix, each with its own power of ten.
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
  listOf(number)(values, 'values');
  const largest = Math.max(0, ...values.map(Math.abs));
  const [written = '', shownUnit = ''] = formatQuantity(largest, unit, { digits }).split(
    /\u00a0|(?=°)/,
  );
  if (written.includes('e')) {
    const scale = unit === '%' ? 100 : 1;
    const numbers = values.map((value) =>
      (scale * value)
        .toExponential(digits - 1)
        .replaceAll('-', '\u2212')
        .replace('+', ''),
    );
    return { numbers, unit: shownUnit };
  }
  const decimals = written.split('.')[1]?.length ?? 0;
  const power = largest === 0 ? 0 : Math.round(Math.log10(largest / Number(written)));
  const numbers = values.map((value) => {
    const rounded = Math.abs(value / 10 ** power).toFixed(decimals);
    return value < 0 && Number(rounded) > 0 ? `\u2212${rounded}` : rounded;
  });
  return { numbers, unit: shownUnit };
}
