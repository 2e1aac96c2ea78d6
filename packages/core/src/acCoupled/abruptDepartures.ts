import type { Sweep } from '../capture/sweep.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Seconds, Volts } from '../units.js';

/** A departure that came faster than a throttle can move, in a recording that tells neither its travel nor where it went. */
export interface AbruptDeparture {
  /** When it began, s, by the recording's stamps; any. */
  readonly start: Seconds;
  /** When it ended, s; not before `start`. */
  readonly end: Seconds;
  /** The leap that it began with, V, any; its sign is that of the leap. */
  readonly depth: Volts;
}

/** Readings this far apart are compared. */
const window: Seconds = 0.001;
/**
 * No spring moves a throttle faster, travels per second: a snap takes 30 ms and more, and at its end twice its mean speed. Common practice,
 * no source; half as much again is left for the slope of a loaded curve.
 */
const fastest = 100;
/** A leap back within this time belongs to the leap before. */
const longest: Seconds = 0.25;

/** A run of readings that leapt from those just before them. */
interface Leap {
  readonly start: Seconds;
  readonly end: Seconds;
  readonly depth: Volts;
}

/**
 * Finds departures that are abrupt: readings at most 1 ms apart (or one sample, where samples are farther apart) that differ by more than
 * the fastest throttle could have moved the signal and twice the visible departure. A leap and the leap back that
 * follows it within a quarter of a second are one. It needs no level that holds, so it serves a recording that is coupled through a
 * capacitor; shallow and slow departures are not found.
 *
 * @param visible The smallest departure that can be told from noise, V.
 */
export function abruptDepartures(
  sweep: Sweep,
  expected: Expectation,
  visible: Volts,
): readonly AbruptDeparture[] {
  const speed = fastest * steepest(expected);
  const found: AbruptDeparture[] = [];
  let open: Leap | undefined;
  for (const leap of leaps(sweep, speed, 2 * visible)) {
    const isBack =
      open && Math.sign(open.depth) !== Math.sign(leap.depth) && leap.start - open.end <= longest;
    if (open) found.push(isBack ? { ...open, end: leap.end } : open);
    open = isBack ? undefined : leap;
  }
  return open ? [...found, open] : found;
}

/** The steepest slope of the expected curve, V per travel. */
function steepest({ curve: { travel, volts } }: Expectation): number {
  let most = 0;
  for (let i = 1; i < travel.length; i++) {
    const slope = (volts[i]! - volts[i - 1]!) / (travel[i]! - travel[i - 1]!);
    most = Math.max(most, Math.abs(slope));
  }
  return most;
}

function leaps({ time, signal }: Sweep, speed: number, least: Volts): readonly Leap[] {
  const found: Leap[] = [];
  let leap: Leap | undefined;
  let from = 0;
  for (let i = 1; i < time.length; i++) {
    while (from < i - 1 && time[i]! - time[from]! > window) from++;
    const depth = signal[i]! - signal[from]!;
    const isLeap = Math.abs(depth) > least + speed * (time[i]! - time[from]!);
    if (isLeap && leap && Math.sign(depth) === Math.sign(leap.depth)) {
      leap = { ...leap, end: time[i]!, depth: deeper(leap.depth, depth) };
    } else {
      if (leap) found.push(leap);
      leap = isLeap ? { start: time[from]!, end: time[i]!, depth } : undefined;
    }
  }
  return leap ? [...found, leap] : found;
}

function deeper(one: Volts, other: Volts): Volts {
  return Math.abs(other) > Math.abs(one) ? other : one;
}
