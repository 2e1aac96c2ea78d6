import { fallOf } from '../score/fallOf.js';
import type { Score, Stroke } from '../score/score.js';
import type { Fraction, Seconds, Travel } from '../units.js';

/** What a recording could show at all. */
export interface RecordingLimits {
  /** The smallest visible departure, and the noise's standard deviation, as fractions of the span. */
  readonly visible: Fraction;
  readonly noise: Fraction;
  readonly interval: Seconds;
  readonly blind: readonly (readonly [Travel, Travel])[];
  /** Strokes by hand: closings by the spring may well miss a spot. */
  readonly strokes: readonly Stroke[];
}

export function recordingLimits({
  checks,
  quality,
  couldShow,
  strokes,
  snaps,
}: Score): RecordingLimits {
  const visible =
    checks.find(({ check }) => check === 'visible-departure')?.measured ?? Number.POSITIVE_INFINITY;
  return {
    visible,
    noise: quality.visible > 0 ? (quality.noise / quality.visible) * visible : 0,
    interval: quality.sampledEvery,
    blind: couldShow.blind,
    strokes: strokes.filter((stroke) => !fallOf(stroke, snaps)),
  };
}

/** Of one sensor on two hook-ups the same place is told this far apart; a stroke may seem to end so far short of it. */
const slack: Travel = 0.03;

/** How many strokes by hand went over a travel. */
export function passesOver(travel: Travel, { strokes }: RecordingLimits): number {
  return strokes.filter(
    ({ from, to }) => Math.min(from, to) - slack <= travel && travel <= Math.max(from, to) + slack,
  ).length;
}
