import { oneOf } from '../guard.js';

/** A series of preferred values: its number is how many there are in a decade. */
export type PreferredSeries = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

/** E24 was set by hand and follows no formula; E12, E6 and E3 take every 2nd, 4th and 8th of it. */
const e24 = [
  100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300, 330, 360, 390, 430, 470, 510, 560,
  620, 680, 750, 820, 910,
] as const;

export const seriesNames = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'] as const;

/**
 * One decade of a series of preferred values for resistors, as whole numbers of three figures: 100 stands
 * for 1.00, 10.0, 100 Ω and so on.
 *
 * Method: E3 to E24 from the table; E48, E96 and E192 are 10^(i/N) to three figures, with the standard's
 * single exception 9.20 (the formula gives 9.19). Source: IEC 60063.
 *
 * @param series `E3`, `E6`, `E12`, `E24`, `E48`, `E96` or `E192`.
 * @returns As many values as the series' number says, rising from 100 to below 1000.
 * @throws InputError at `series`.
 *
 * @example
 * preferredValues('E6') // => [100, 150, 220, 330, 470, 680]
 */
export function preferredValues(series: PreferredSeries): readonly number[] {
  const count = Number(oneOf(series, seriesNames, 'series').slice(1));
  if (count <= 24) return e24.filter((_, i) => i % (24 / count) === 0);
  return Array.from({ length: count }, (_, i) => {
    const figures = Math.round(100 * 10 ** (i / count));
    return figures === 919 ? 920 : figures;
  });
}
