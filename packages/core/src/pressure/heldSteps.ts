import { column, timeColumn } from '../column.js';
import { positive } from '../guard.js';
import { median } from '../statistics/median.js';
import type { Seconds, Volts } from '../units.js';

/** A stretch of a recording in which the signal was held. */
export interface HeldStep {
  /** When it begins, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** When it ends, s, after it begins. */
  readonly end: Seconds;
  /** Its mean, V, any. */
  readonly volts: Volts;
  /** Standard uncertainty of the mean from noise and drift, V: the recorder's own error comes on top. */
  readonly uncertainty: Volts;
  /** How fast it drifts, V/s, any: of a pump that leaks. */
  readonly drift: number;
}

/** So many samples in a row off the line end a step. */
const off = 3;
/** How far off, in standard deviations of the noise. */
const far = 5;
/** From so many samples on a step has a slope of its own. */
const sloped = 20;
/** A step drifts by no more than this part of all that the signal did. */
const mostDrift = 0.05;

/**
 * The steps of a recorded pump-down: the stretches in which the signal was held, between strokes of the pump.
 *
 * Method: a straight line is carried on from sample to sample until three in a row lie off it by five standard deviations of the noise, which
 * is taken from the differences of successive samples (common practice, no source).
 *
 * @param time Moments of the samples, s, never decreasing.
 * @param volts The signal there, V; as many.
 * @param least A step lasts at least so long, s, above 0; 1 when left out.
 * @throws InputError at `time…`, `volts…` or `least`; `time-backwards` where the moments go back.
 *
 * @example
 * const time = Array.from({ length: 60 }, (_, i) => i / 10);
 * const steps = heldSteps(time, time.map((t) => (t < 3 ? 4 : 2.5)));
 * steps.map(({ volts }) => volts) // => [4, 2.5]
 */
export function heldSteps(
  time: ArrayLike<number>,
  volts: ArrayLike<number>,
  least: Seconds = 1,
): readonly HeldStep[] {
  const t = timeColumn(time, 'time');
  const v = column(volts, t.length, 'volts');
  positive(least, 'least', 's');
  let [low, high] = [Infinity, -Infinity];
  const steps = new Float64Array(Math.max(0, v.length - 1));
  let finest = Infinity;
  for (let i = 0; i < v.length; i++) {
    low = Math.min(low, v[i]!);
    high = Math.max(high, v[i]!);
    if (i === 0) continue;
    const step = Math.abs(v[i]! - v[i - 1]!);
    steps[i - 1] = step;
    if (step > 0) finest = Math.min(finest, step);
  }
  if (steps.length === 0) return [];
  // Of a recorder's own steps the finest one is noise too.
  const coarse = high > low ? Math.min(0.3 * finest, 0.004 * (high - low)) : 0;
  const noise = Math.max(median(steps) / (0.6745 * Math.SQRT2), coarse);
  const found: HeldStep[] = [];
  let line = emptyLine();
  let misses = 0;
  let from = 0;
  const close = (to: number): void => {
    const seconds = t[to]! - t[from]!;
    const drift = line.slope();
    if (to > from && seconds >= least && Math.abs(drift * seconds) <= mostDrift * (high - low)) {
      // A drift is as likely to have been read early as late: evenly over it.
      const uncertainty = Math.hypot(
        noise / Math.sqrt(line.count()),
        (drift * seconds) / Math.sqrt(12),
      );
      found.push({ start: t[from]!, end: t[to]!, volts: line.mean(), uncertainty, drift });
    }
  };
  for (let i = 0; i < t.length; i++) {
    const isOff = line.count() > 0 && Math.abs(v[i]! - line.at(t[i]!)) > far * noise;
    if (!isOff) {
      line.add(t[i]!, v[i]!);
      misses = 0;
    } else if (++misses === off) {
      close(i - off);
      line = emptyLine();
      misses = 0;
      from = i - off + 1;
      for (let k = from; k <= i; k++) line.add(t[k]!, v[k]!);
    }
  }
  close(t.length - 1 - misses);
  return found;
}

/** A straight line through samples that come one after another (Welford's running sums, from memory). */
interface Line {
  readonly add: (t: number, v: number) => void;
  readonly count: () => number;
  readonly mean: () => number;
  readonly slope: () => number;
  readonly at: (t: number) => number;
}

function emptyLine(): Line {
  let [count, mean, moment, product, square] = [0, 0, 0, 0, 0];
  const slope = () => (count >= sloped && square > 0 ? product / square : 0);
  return {
    add: (t, v) => {
      count++;
      const off = t - moment;
      moment += off / count;
      mean += (v - mean) / count;
      product += off * (v - mean);
      square += off * (t - moment);
    },
    count: () => count,
    mean: () => mean,
    slope,
    at: (t) => mean + slope() * (t - moment),
  };
}
