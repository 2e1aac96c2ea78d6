import type { ClipLevels } from '../capture/clipLevels.js';
import type { Criteria } from '../criteria.js';
import type { ExpectedWindows, ReadingWindow } from '../expectation/expectedWindows.js';
import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import { farthestStop } from '../motion/limits.js';
import type { Movement } from '../movement/followThrottle.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import type { Fraction } from '../units.js';
import { farthestReturn } from './endReadings.js';

/**
 * How seldom leads are on other terminals, or an end lies elsewhere; a recording begins and ends with the throttle held away from where its
 * spring keeps it; a throttle falls, and rebounds, at the other stop; a stop is never reached. Common practice, no source.
 */
export const seldom: Fraction = 0.05;

/** Of the closed and the open side. */
type Pair = readonly [closed: number, open: number];

/** What may lie behind the lowest and the highest level of a recording. */
interface Hypothesis {
  readonly before: Fraction;
  readonly levels: Pair;
  readonly deviations: Pair;
  /** Which of the two a shift moves, both alike. */
  readonly shifted: readonly [closed: boolean, open: boolean];
}

const unshifted = [false, false] as const;
/** One of the ends, or both by a rotor that sits turned on its shaft. */
const shifts = [
  [true, false],
  [false, true],
  [true, true],
] as const;

/**
 * How probable it is that the leads are on wrong terminals: each way to connect them tells which levels the signal moves between. The
 * recording's are held against those, against the right ones and against those of a sensor whose ends lie elsewhere. With the feed leads
 * exchanged the throttle seems to lie open where its spring keeps it, and to be flung open where it closes.
 *
 * Method: Bayes' theorem, with normal densities and a low even one for a stop that was never reached.
 */
export function chanceMisconnected(
  { path, snaps, flungOpen }: Pick<Movement, 'path' | 'snaps' | 'flungOpen'>,
  { closed, open }: ExpectedWindows,
  { connections, exchanged }: Pick<HookUpLevels, 'connections' | 'exchanged'>,
  scale: ThrottleScale,
  clip: ClipLevels,
  criteria: Criteria,
): Fraction {
  let low = path[0]!;
  let high = low;
  for (const level of path) {
    if (level < low) low = level;
    if (level > high) high = level;
  }
  // A window holds all tolerances at their worst, some three standard deviations.
  const deviation = (window: ReadingWindow): number =>
    Math.max((window.high - window.low) / 2 / Math.abs(scale.span), criteria.endMarginal) / 3;
  const deviations = [deviation(closed), deviation(open)] as const;
  const wider = Math.max(...deviations);
  const isOpen = (level: number): boolean => level > high - farthestReturn * (high - low);
  const liesOpen = isOpen(path[0]!) && isOpen(path[path.length - 1]!);
  const falls = snaps.length - flungOpen;
  const ofSpring = (opens: boolean): Fraction =>
    (opens === liesOpen ? 1 : seldom) * ((opens ? falls : -falls) > 0 ? seldom : 1);
  const isClipped = (level: number): boolean =>
    [clip.low, clip.high].some(
      (end) => end !== undefined && Math.abs(onScale(scale, end) - level) <= wider,
    );
  const right = {
    before: ofSpring(false),
    levels: [0, 1],
    deviations,
    shifted: unshifted,
  } as const;
  const sound = [
    right,
    ...shifts.map((shifted) => ({ ...right, before: seldom * right.before, shifted })),
  ];
  const wrong = connections.map((ends): Hypothesis => {
    const [one, other] = [onScale(scale, ends.closed), onScale(scale, ends.open)];
    return {
      before: seldom / connections.length,
      levels: [Math.min(one, other), Math.max(one, other)],
      deviations: [wider, wider],
      shifted: unshifted,
    };
  });
  if (exchanged)
    wrong.push({
      before: seldom * ofSpring(true),
      levels: [onScale(scale, exchanged.open), onScale(scale, exchanged.closed)],
      deviations: [deviations[1], deviations[0]],
      shifted: unshifted,
    });
  const sum = (all: readonly Hypothesis[], elsewhere: Pair): number =>
    all.reduce((total, one) => total + one.before * density([low, high], one, elsewhere), 0);
  // Where the recorder's range ends, a reading is a bound alone.
  const asSound = sum(sound, [isClipped(low) ? 1 : seldom, isClipped(high) ? 1 : seldom]);
  const asWrong = sum(wrong, [seldom, seldom]);
  return asWrong / (asSound + asWrong);
}

/** Chance density of two levels, of which each may be anywhere on the span instead with a low chance. */
function density(
  [low, high]: Pair,
  { levels, deviations, shifted }: Hypothesis,
  [lowElsewhere, highElsewhere]: Pair,
): number {
  const off = [low - levels[0], high - levels[1]] as const;
  const shift = (farthestStop / 2) ** 2;
  const variance = (i: 0 | 1): number => deviations[i] ** 2 + (shifted[i] ? shift : 0);
  const variances = [variance(0), variance(1)] as const;
  const common = shifted[0] && shifted[1] ? shift : 0;
  const determinant = variances[0] * variances[1] - common ** 2;
  const square =
    (off[0] ** 2 * variances[1] + off[1] ** 2 * variances[0] - 2 * off[0] * off[1] * common) /
    determinant;
  const both = Math.exp(-square / 2) / (2 * Math.PI * Math.sqrt(determinant));
  const alone = (i: 0 | 1): number =>
    Math.exp(-(off[i] ** 2) / 2 / variances[i]) / Math.sqrt(2 * Math.PI * variances[i]);
  const lowNot = off[0] > 0 ? lowElsewhere : 0;
  const highNot = off[1] < 0 ? highElsewhere : 0;
  return both + alone(0) * highNot + alone(1) * lowNot + lowNot * highNot;
}
