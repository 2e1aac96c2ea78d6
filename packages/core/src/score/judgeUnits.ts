import type { Circuit } from '../circuit/circuit.js';
import type { ExpectedWindows } from '../expectation/expectedWindows.js';
import { longestStroke } from '../motion/limits.js';
import type { Fraction, Seconds, Volts } from '../units.js';
import type { Check, UnitThatFits } from './score.js';

/** The source, what pulls the signal and ground may stray by this part of what lies between them. */
const slack = 0.25;
/** Readings of this many times the largest that a hook-up can make are in another unit; exchanged or broken leads make none of them. */
const farBeyond = 2.5;
/** Interference and broken leads take a signal out of what a hook-up can make for less of the time than this. */
const mostBeyond: Fraction = 0.2;
/** Of more samples than this a part is looked at. */
const mostSamples = 200_000;
/** Converters of so many bits are common. */
const converterBits = [8, 10, 12, 14, 16] as const;

/** The checks of the units, and what would fit where they can't be right. */
export interface JudgedUnits {
  readonly checks: readonly Check[];
  readonly fit: readonly UnitThatFits[];
}

/**
 * Whether a recording's numbers can be volts of its hook-up, and seconds of a hand's strokes: else a column is in another unit, and nothing that
 * it seems to show is so.
 *
 * @param strokes How long each whole stroke took.
 */
export function judgeUnits(
  signal: Float64Array,
  strokes: readonly Seconds[],
  { source, load }: Circuit,
  windows: ExpectedWindows,
): JudgedUnits {
  const { pullUp } = load;
  const pulled = pullUp && 'volts' in pullUp ? pullUp.volts : 0;
  const [lowest, highest] = [Math.min(0, pulled), Math.max(source.volts, pulled)];
  const beyond = slack * (highest - lowest);
  const isPossible = (volts: Volts): boolean =>
    volts >= lowest - beyond && volts <= highest + beyond;
  const far = farBeyond * Math.max(-lowest, highest);
  const share = shareOf(signal, (volts) => Math.abs(volts) > far);
  const quickest = strokes.reduce((least, one) => Math.min(least, one), Infinity);
  const limitFrom = 'expected-window';
  const isSignals = share <= mostBeyond;
  const isTimes = !(quickest > longestStroke && quickest < Infinity);
  const signalCheck: Check = {
    check: 'possible-readings',
    outcome: isSignals ? 'conforms' : 'cannot-tell',
    unit: '1',
    measured: share,
    highLimit: mostBeyond,
    margin: mostBeyond - share,
    limitFrom,
  };
  const timeCheck: Check = {
    check: 'stroke-time',
    outcome: isTimes ? 'conforms' : 'cannot-tell',
    unit: 's',
    ...(quickest < Infinity && { measured: quickest, margin: longestStroke - quickest }),
    highLimit: longestStroke,
    limitFrom: 'criteria',
  };
  return {
    checks: [signalCheck, timeCheck],
    fit: [
      ...(isSignals ? [] : unitsOfSignal(signal, source.volts, windows, isPossible)),
      ...(isTimes ? [] : unitsOfTime(quickest)),
    ],
  };
}

function shareOf(signal: Float64Array, is: (volts: Volts) => boolean): Fraction {
  const stride = Math.max(1, Math.floor(signal.length / mostSamples));
  let [count, looked] = [0, 0];
  for (let i = 0; i < signal.length; i += stride, looked++) if (is(signal[i]!)) count++;
  return count / looked;
}

/** The units in which a column would be readings of the hook-up, the one that comes nearest to its end readings first. */
function unitsOfSignal(
  signal: Float64Array,
  source: Volts,
  { closed, open }: ExpectedWindows,
  isPossible: (volts: Volts) => boolean,
): readonly UnitThatFits[] {
  const whole = shareOf(signal, (number) => Number.isInteger(number)) === 1;
  const most = signal.reduce((one, other) => Math.max(one, other), -Infinity);
  const bits = whole ? converterBits.filter((count) => most < 2 ** count).slice(0, 2) : [];
  const candidates: readonly UnitThatFits[] = [
    { column: 'signal', unit: 'mV', voltsPerUnit: 1e-3 },
    { column: 'signal', unit: '%', voltsPerUnit: source / 100 },
    ...bits.map(
      (count): UnitThatFits => ({
        column: 'signal',
        unit: 'counts',
        bits: count,
        voltsPerUnit: source / (2 ** count - 1),
      }),
    ),
  ];
  const [low, high] = extremes(signal);
  const ends = [closed.nominal, open.nominal].sort((one, other) => one - other);
  const off = ({ voltsPerUnit = 1 }: UnitThatFits): number =>
    Math.abs(low * voltsPerUnit - ends[0]!) + Math.abs(high * voltsPerUnit - ends[1]!);
  return candidates
    .filter(
      ({ voltsPerUnit = 1 }) =>
        shareOf(signal, (number) => !isPossible(number * voltsPerUnit)) <= mostBeyond,
    )
    .sort((one, other) => off(one) - off(other));
}

/** What nine of ten readings lie between. */
function extremes(signal: Float64Array): readonly [number, number] {
  const sorted = signal.toSorted();
  const at = (part: Fraction): number => sorted[Math.floor(part * (sorted.length - 1))]!;
  return [at(0.05), at(0.95)];
}

function unitsOfTime(quickest: Seconds): readonly UnitThatFits[] {
  const isFit = (seconds: Seconds): boolean => seconds < longestStroke;
  if (isFit(1e-3 * quickest)) return [{ column: 'time', unit: 'ms' }];
  return isFit(1e-6 * quickest) ? [{ column: 'time', unit: 'µs' }] : [];
}
