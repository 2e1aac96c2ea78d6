import { finiteBetween, oneOf } from '../guard.js';
import type { Fraction } from '../units.js';
import { type CountedRatio, heldFraction } from './countedRatio.js';

/** A sensor whose output rises as the throttle opens, or falls. */
export type OutputSense = 'rising' | 'falling';

/** What a scan tool shows for a ratio: the byte, its percent, and the percents one count either way. */
export interface ThrottlePercent {
  /** The byte that the control unit sends, 0 to 255. */
  readonly count: number;
  /** What is shown, %, 0 to 100: 100/255 % for each count. */
  readonly percent: number;
  /** The percent of one count less, held at 0 %. */
  readonly low: number;
  /** The percent of one count more, held at 100 %. */
  readonly high: number;
}

/**
 * The absolute throttle position that a scan tool shows for a ratio of the reference.
 *
 * One byte of 100/255 % a count, right to ±1 count; complemented for a falling output, so that it grows as the
 * throttle opens. The closed throttle does not show 0 %. Source: SAE J1979, parameter 0x11 (scaling; the
 * complement is from memory).
 *
 * @param ratio Signal as a fraction of the reference; below 0 and above 1 it clips, −1000 to 1000.
 * @param sense `rising` when left out.
 * @throws InputError at `ratio` or `sense`.
 *
 * @example
 * absoluteThrottlePercent(0.2) // => { count: 51, percent: 20, low: 5000 / 255, high: 5200 / 255 }
 */
export function absoluteThrottlePercent(
  ratio: Fraction,
  sense: OutputSense = 'rising',
): ThrottlePercent {
  finiteBetween(ratio, -1000, 1000, 'ratio');
  return percentOf(countOf(opening(ratio, sense)));
}

/**
 * The relative throttle position that a scan tool shows: the absolute one less what the control unit has learned
 * as closed. The open throttle therefore shows less than 100 %. Source: SAE J1979, parameter 0x45 (from memory).
 *
 * @param ratio Signal as a fraction of the reference; below 0 and above 1 it clips, −1000 to 1000.
 * @param learnedClosed The signal that was learned as closed, as a fraction of the reference, 0 to 1.
 * @param sense `rising` when left out.
 * @throws InputError at `ratio`, `learnedClosed` or `sense`.
 *
 * @example
 * relativeThrottlePercent(0.5, 0.2).count // => 77
 */
export function relativeThrottlePercent(
  ratio: Fraction,
  learnedClosed: Fraction,
  sense: OutputSense = 'rising',
): ThrottlePercent {
  finiteBetween(ratio, -1000, 1000, 'ratio');
  finiteBetween(learnedClosed, 0, 1, 'learnedClosed');
  return percentOf(countOf(opening(ratio, sense) - opening(learnedClosed, sense)));
}

/**
 * The ratio of the reference behind an absolute throttle position: {@link absoluteThrottlePercent} back.
 *
 * @param percent What the scan tool shows, 0 to 100 %; taken to the nearest count.
 * @param sense `rising` when left out.
 * @returns The count, its ratio and the ratios of one count less and one more.
 * @throws InputError at `percent` or `sense`.
 *
 * @example
 * throttlePercentRatio(20) // => { count: 51, ratio: 0.2, low: 50 / 255, high: 52 / 255 }
 */
export function throttlePercentRatio(percent: number, sense: OutputSense = 'rising'): CountedRatio {
  finiteBetween(percent, 0, 100, 'percent', '%');
  const count = Math.round((percent * 255) / 100);
  const [near, less, more] = [count, count - 1, count + 1].map((at) =>
    opening(heldFraction(at / 255), sense),
  ) as [number, number, number];
  return { count, ratio: near, low: Math.min(less, more), high: Math.max(less, more) };
}

/** The ratio as it grows with the opening throttle. */
function opening(ratio: Fraction, sense: OutputSense): Fraction {
  return oneOf(sense, ['rising', 'falling'], 'sense') === 'rising' ? ratio : 1 - ratio;
}

function countOf(ratio: Fraction): number {
  return Math.round(heldFraction(ratio) * 255);
}

function percentOf(count: number): ThrottlePercent {
  const percent = (at: number) => (100 * Math.min(255, Math.max(0, at))) / 255;
  return { count, percent: percent(count), low: percent(count - 1), high: percent(count + 1) };
}
