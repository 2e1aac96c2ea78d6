import type { SweepLike } from '../capture/sweep.js';
import { noMoreThan } from '../noMoreThan.js';
import type { Seconds, Volts } from '../units.js';
import type { DigitalMeter } from './instrument.js';
import { movingMean } from './movingMean.js';
import { rangeFor } from './rangeFor.js';
import { usualRangeChange } from './usualValues.js';
import { watched } from './watched.js';

/** What a display shows from a time on. */
export interface ShownDigits {
  /** When it begins to show this, s, on the sweep's clock. */
  readonly time: Seconds;
  /** The digits as they stand: `2.48`, `OL` over range, empty while the range changes. */
  readonly text: string;
  /** The number that they stand for, V; left out where there is none. */
  readonly volts?: Volts;
  /** The range, V. */
  readonly range: Volts;
}

/** As many conversions of one sweep are worked out: a day of ten in a second, and some more. */
const mostConversions = 1e6;

/** What a meter showed of a sweep. */
export interface DigitalDisplay {
  /** One display after the other, each until the next. */
  readonly shown: readonly ShownDigits[];
  /** The lowest and highest conversion, V; left out where the meter keeps none. Conversions see means, not what happened between. */
  readonly extremes?: { readonly low: Volts; readonly high: Volts };
}

/**
 * The digits that a meter shows over time while it watches a sweep: means over apertures, one after the other from the sweep's beginning, in
 * steps of the range, each shown when its aperture ends if the display may change then. On a moving input each number belongs to no
 * place of the travel.
 *
 * @throws InputError for what no sweep and no meter can be.
 *
 * @example
 * const meter = { kind: 'digital-meter', name: 'meter', inputOhms: 10e6, ranges: [1.999, 19.99], counts: 1999, aperture: 0.1 } as const;
 * const rising = { time: Float64Array.of(0, 1), signal: Float64Array.of(1, 4) };
 * digitalDisplay(meter, rising).shown.slice(1, 5).map(({ text }) => text) // => ['1.450', '1.750', 'OL', '2.35']
 */
export function digitalDisplay(meter: DigitalMeter, given: SweepLike): DigitalDisplay {
  const sweep = watched(meter, given, ['digital-meter']);
  const { ranges, aperture, deadTime = 0, displayInterval = 0, rangeChange } = meter;
  const { up, down, blank } = rangeChange ?? usualRangeChange;
  const meanOf = movingMean(sweep);
  const [first, last] = [sweep.time[0]!, sweep.time.at(-1)!];
  noMoreThan(
    mostConversions,
    (last - first) / (aperture + deadTime),
    'instrument.aperture',
    'conversions of this sweep',
  );
  const shown: ShownDigits[] = [];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let range = meter.heldRange ?? rangeFor(meter, sweep.signal[0]!) ?? ranges.at(-1)!;
  let changed = Number.NEGATIVE_INFINITY;
  let start = first;
  for (let count = 1; start + aperture <= last + 1e-9 * aperture; count++) {
    const end = start + aperture;
    const mean = meanOf(start, end);
    const isOver = Math.abs(mean) > range;
    const volts = isOver ? undefined : rounded(mean, range, meter.counts);
    if (volts !== undefined) [low, high] = [Math.min(low, volts), Math.max(high, volts)];
    const next = nextRange(meter, mean, range, up, down);
    // Rounding must not let every other change of the display be missed.
    if (end - changed >= displayInterval * (1 - 1e-9)) {
      changed = end;
      const text = volts === undefined ? 'OL' : volts.toFixed(decimals(range, meter.counts));
      shown.push({ time: end, text, ...(volts !== undefined && { volts }), range });
    }
    start = first + count * (aperture + deadTime);
    if (next === range) continue;
    range = next;
    if (blank === 0) continue;
    shown.push({ time: end, text: '', range });
    changed = Number.NEGATIVE_INFINITY;
    const each = aperture + deadTime;
    count += Math.max(0, Math.ceil((end + blank - start) / each - 1e-9));
    start = first + count * each;
  }
  return { shown, ...(meter.keepsExtremes && low <= high && { extremes: { low, high } }) };
}

function nextRange(
  { ranges, heldRange }: DigitalMeter,
  mean: Volts,
  range: Volts,
  up: number,
  down: number,
): Volts {
  if (heldRange !== undefined) return heldRange;
  const place = ranges.indexOf(range);
  if (Math.abs(mean) > up * range) return ranges[Math.min(place + 1, ranges.length - 1)]!;
  if (Math.abs(mean) < down * range) return ranges[Math.max(place - 1, 0)]!;
  return range;
}

function rounded(volts: Volts, range: Volts, counts: number): Volts {
  return (Math.round((volts / range) * counts) * range) / counts;
}

/** As many decimals as a count needs. */
function decimals(range: Volts, counts: number): number {
  return Math.max(0, Math.min(20, Math.ceil(-Math.log10((range / counts) * 1.001))));
}
