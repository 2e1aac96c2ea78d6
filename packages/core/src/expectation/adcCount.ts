import { finiteBetween, oneOf, wholeNumber } from '../guard.js';
import type { Fraction } from '../units.js';
import { type CountedRatio, heldFraction } from './countedRatio.js';

/**
 * What the highest ratio, 1, divides into: `steps` counts 2^N steps and drops the fraction, so full scale is one
 * step short of the reference; `full-scale` puts the reference at the highest count, 2^N − 1, and rounds.
 */
export type AdcConvention = 'steps' | 'full-scale';

/**
 * The count that an analogue-to-digital converter gives for a ratio of its reference.
 *
 * The ideal converter: no offset, gain or linearity error. Which convention a control unit's numbers follow
 * stands in its documents; at 10 bits the two differ by 0.1 %.
 *
 * @param ratio Voltage as a fraction of the reference; below 0 and above 1 it clips, −1000 to 1000.
 * @param bits Resolution, 1 to 32.
 * @param convention `steps` (2^N) or `full-scale` (2^N − 1).
 * @returns The count with the ratios that it can stand for.
 * @throws InputError at `ratio`, `bits` or `convention`.
 *
 * @example
 * adcCount(0.5, 10, 'steps').count // => 512
 * adcCount(1, 10, 'steps').count // => 1023
 */
export function adcCount(ratio: Fraction, bits: number, convention: AdcConvention): CountedRatio {
  finiteBetween(ratio, -1000, 1000, 'ratio');
  checkConverter(bits, convention);
  const highest = 2 ** bits - 1;
  const held = heldFraction(ratio);
  const count =
    convention === 'steps' ? Math.floor(held * (highest + 1)) : Math.round(held * highest);
  return ratioOf(Math.min(highest, count), highest, convention);
}

/**
 * The ratio of its reference that an analogue-to-digital converter's count stands for: {@link adcCount} back.
 *
 * @param count Whole number from 0 to 2^N − 1.
 * @param bits Resolution, 1 to 32.
 * @param convention `steps`: the middle of the count's step; `full-scale`: count / (2^N − 1).
 * @throws InputError at `count`, `bits` or `convention`.
 *
 * @example
 * adcRatio(511, 10, 'full-scale').ratio // => ≈ 0.4995
 */
export function adcRatio(count: number, bits: number, convention: AdcConvention): CountedRatio {
  checkConverter(bits, convention);
  const highest = 2 ** bits - 1;
  return ratioOf(wholeNumber(count, 0, highest, 'count'), highest, convention);
}

function checkConverter(bits: number, convention: AdcConvention): void {
  wholeNumber(bits, 1, 32, 'bits');
  oneOf(convention, ['steps', 'full-scale'], 'convention');
}

function ratioOf(count: number, highest: number, convention: AdcConvention): CountedRatio {
  if (convention === 'steps') {
    const steps = highest + 1;
    return { count, ratio: (count + 0.5) / steps, low: count / steps, high: (count + 1) / steps };
  }
  return {
    count,
    ratio: count / highest,
    low: heldFraction((count - 0.5) / highest),
    high: heldFraction((count + 0.5) / highest),
  };
}
