import type { Expectation, Fraction, Seconds } from '@truesweep/core';
import type { HabitRecorder, Recorded } from './recorder.js';

interface Shown {
  readonly recorder: HabitRecorder;
  readonly recorded: Recorded;
  readonly travel: Float64Array;
  readonly step: Seconds;
  readonly bounds: {
    readonly closedRuns: readonly (readonly [number, number])[];
    readonly openRuns: readonly (readonly [number, number])[];
  };
  readonly visible: Fraction;
  readonly outputs: Float64Array;
  readonly expected: Expectation;
  readonly isRecorded: (place: number) => boolean;
  readonly isMoving: (place: number) => boolean;
}

/** The dropout that a recording must be able to show, and in how many rows. */
const dropout: Seconds = 0.015;

/**
 * Whether a recording could show what it must; undefined where that is a matter of opinion. Doubtful is one that could not,
 * though nothing in it tells.
 */
export function adequacy(shown: Shown): { adequate: boolean | undefined; doubtful: boolean } {
  const judged = [fineness(shown), wholeness(shown), closeness(shown)];
  const adequate = judged.includes(false) ? false : judged.includes(undefined) ? undefined : true;
  return {
    adequate,
    doubtful:
      adequate === false &&
      judged.every((one) => one !== false || one === judged[0]) &&
      isSecret(shown),
  };
}

/** Lines or averages that were rounded so coarsely that they look like samples of a quiet signal. */
function isSecret({ recorder, recorded }: Shown): boolean {
  const { form, told, interval, resolution } = recorder;
  if (told.sampling !== undefined || interval > dropout / 2) return false;
  return form.kind === 'moving average' && recorded.noise < 0.4 * resolution;
}

/** A dropout of 15 ms leaves two rows, and no more than 5 % of span is hidden. */
function fineness({ recorder, visible }: Shown): boolean | undefined {
  const { interval, form, integrates } = recorder;
  const window = form.rows * interval;
  const every = form.kind === 'pairs' || form.kind === 'lines' ? window : interval;
  const rows = dropout / every + 1e-9;
  const isLate =
    recorder.stamps === 'batches' ||
    recorder.stamps === 'wrapped' ||
    recorder.stamps === 'backwards';
  if (rows < 1.9 && form.kind !== 'pairs') return false;
  if (visible > 0.055 || (form.kind === 'moving average' && window >= dropout)) return false;
  if (form.kind === 'pairs' && every > 1.1 * dropout) return false;
  if (visible > 0.045 || rows < 2.2 || (integrates && rows < 3.3) || isLate) return undefined;
  const smoothed = { 'moving average': window, median: window / 2 + dropout / 4 };
  if (
    form.kind in smoothed &&
    smoothed[form.kind as keyof typeof smoothed] + 2.2 * interval > dropout / 2
  )
    return undefined;
  // Two or three rows to a stamp leave open when they were taken.
  if (recorder.stamps === '10 ms' && interval > 0.0026) return undefined;
  if (recorder.loss === 'on change' || recorder.loss === 'readings held')
    return rows > 4 && recorder.loss !== 'on change' ? true : undefined;
  return true;
}

/** From a rest at one stop to the other and back, neither in a fall only. */
function wholeness({
  travel,
  step,
  bounds,
  isRecorded,
  outputs,
  expected,
}: Shown): boolean | undefined {
  const moves = { opening: 0, closing: 0, slowOpening: 0, slowClosing: 0 };
  let at: 'closed' | 'open' | undefined;
  let since = 0;
  let most = -Infinity;
  let least = Infinity;
  for (let i = 0; i < travel.length; i++) {
    if (!isRecorded(i)) {
      at = undefined;
      continue;
    }
    const x = travel[i]!;
    most = Math.max(most, x);
    least = Math.min(least, x);
    const now = x >= 0.98 ? 'open' : x <= 0.035 ? 'closed' : undefined;
    if (!now) continue;
    if (at !== undefined && now !== at) {
      const isSlow = (i - since) * step > 0.15;
      if (now === 'open') {
        moves.opening++;
        if (isSlow) moves.slowOpening++;
      } else {
        moves.closing++;
        if (isSlow) moves.slowClosing++;
      }
    }
    at = now;
    since = i;
  }
  const { closedRuns, openRuns } = bounds;
  if (moves.opening === 0 || moves.closing === 0) {
    // What stopped just short of a stop, within its window, looks whole.
    const { windows } = expected;
    const margin = 0.03 * Math.abs(windows.open.nominal - windows.closed.nominal);
    const reaches = ({ low, high }: { low: number; high: number }): boolean =>
      outputs.some((volts, i) => isRecorded(i) && volts > low - margin && volts < high + margin);
    const nearlyWhole =
      most > 0.85 && most < 0.98 && reaches(windows.open) && reaches(windows.closed);
    return nearlyWhole ? undefined : false;
  }
  if (closedRuns.length === 0 || openRuns.length === 0) return undefined;
  return moves.slowOpening > 0 && moves.slowClosing > 0 ? true : undefined;
}

/** No gap in a movement that would hide a dropout. */
function closeness({
  recorded,
  recorder,
  travel,
  isMoving,
  isRecorded,
}: Shown): boolean | undefined {
  const { first, stamp } = recorded;
  const every =
    recorder.form.kind === 'pairs' || recorder.form.kind === 'lines'
      ? recorder.form.rows * recorder.interval
      : recorder.interval;
  // Stamps of 10 ms part rows that lie close.
  const least = Math.max(recorder.stamps === '10 ms' ? 0.0101 : 0.0075, 1.5 * every);
  for (let row = 1; row < first.length; row++) {
    const gap = stamp[row]! - stamp[row - 1]!;
    if (gap <= least) continue;
    const place = Math.min(travel.length - 1, first[row]!);
    const before = Math.min(travel.length - 1, first[row - 1]!);
    if ((isMoving(place) || isMoving(before)) && isRecorded(Math.max(0, place - 1)))
      return undefined;
  }
  return true;
}
