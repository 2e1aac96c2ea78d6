import { InputError } from '../errors.js';
import { listOf } from '../fields.js';
import { between } from '../guard.js';
import { straightLine } from '../statistics/straightLine.js';
import type { Pascals, Seconds } from '../units.js';

/**
 * How fast a pumped-down sensor with its hose leaks: the time in which the vacuum falls to 37 %.
 *
 * Method: Δp = Δp₀·exp(−t/τ), ln Δp fitted by a straight line. Air that was pumped warms up again and looks like a leak: wait before timing. No
 * source was found for a limit, so none is judged.
 *
 * @param held Pressures below (or above) the air around, Pa, without sign and above 0, each with its moment, s; two or more.
 * @returns τ, s; `Infinity` where it doesn't fall.
 * @throws InputError at `held…`; `no-span` where all are of one moment.
 *
 * @example
 * leakTime([{ seconds: 0, pascals: 60000 }, { seconds: 30, pascals: 57000 }]) // => ≈ 584.9
 */
export function leakTime(
  held: readonly { readonly seconds: Seconds; readonly pascals: Pascals }[],
): Seconds {
  listOf(
    { seconds: between(-1e9, 1e9, 's'), pascals: between(1e-3, 1e9, 'Pa') },
    2,
    1e5,
  )(held, 'held');
  const line = straightLine(
    held.map(({ seconds }) => seconds),
    held.map(({ pascals }) => Math.log(pascals)),
  );
  if (!line)
    throw new InputError('no-span', 'held', 'held is all of one moment; give two or more.');
  return line.slope < 0 ? -1 / line.slope : Infinity;
}
