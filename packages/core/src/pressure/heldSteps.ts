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
  /** How fast it drifts, V/s, any: of a pump that leaks. Left out where it has fewer than five samples: too few to know. */
  readonly drift?: number;
  /** Standard uncertainty of the drift from noise, V/s, 0 or above; left out with it. */
  readonly driftUncertainty?: number;
}

/** So many samples in a row off the line end a step. */
const off = 3;
/** How far off, in standard deviations of the noise. */
const far = 5;
/** From so many samples on a drift is known: with fewer a stroke's end is as likely. */
const known = 5;
/** A step drifts by no more than this part of all that the signal did. */
const mostDrift = 0.05;

/**
 * The steps of a recorded pump-down: the stretches in which the signal was held, between strokes of the pump.
 *
 * Method: a straight line is carried on from sample to sample until three in a row lie off it by five standard deviations of the noise and of
 * where the line leads. The noise is taken from each sample beside the mean of its two neighbours, so that a drift is none (common practice, no source).
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
  const bends = new Float64Array(Math.max(0, v.length - 2));
  let finest = Infinity;
  for (let i = 0; i < v.length; i++) {
    low = Math.min(low, v[i]!);
    high = Math.max(high, v[i]!);
    const step = Math.abs(v[i]! - v[i - 1]!);
    if (step > 0) finest = Math.min(finest, step);
    if (i > 1) bends[i - 2] = Math.abs(v[i - 1]! - (v[i]! + v[i - 2]!) / 2);
  }
  if (bends.length === 0) return [];
  // Of a recorder's own steps the finest one is noise too.
  const coarse = Math.min(0.3 * finest, 0.004 * (high - low));
  const noise = Math.max(median(bends) / (0.6745 * Math.sqrt(1.5)), coarse);
  const found: HeldStep[] = [];
  let line = emptyLine();
  let misses = 0;
  let from = 0;
  const close = (to: number): void => {
    const [start, end] = [t[from]!, t[to]!];
    const seconds = end - start;
    const [count, mean, drift, spread] = line.fitted();
    const drifted = drift * seconds;
    if (seconds >= least && Math.abs(drifted) <= mostDrift * (high - low)) {
      // A drift is as likely to have been read early as late: evenly over it.
      const uncertainty = Math.hypot(noise / Math.sqrt(count), drifted / Math.sqrt(12));
      found.push({
        start,
        end,
        volts: mean,
        uncertainty,
        ...(count >= known && { drift, driftUncertainty: noise * spread }),
      });
    }
  };
  for (let i = 0; i < t.length; i++) {
    // A line of one moment leads anywhere, and so misses none.
    if (!(line.off(t[i]!, v[i]!) > far * noise)) {
      line.add(t[i]!, v[i]!);
      misses = 0;
    } else if (++misses === off) {
      // The next one begins with the samples that lie off.
      i -= off;
      close(i);
      line = emptyLine();
      misses = 0;
      from = i + 1;
    }
  }
  close(t.length - 1 - misses);
  return found;
}

/** A straight line through samples that come one after another (Welford's running sums, from memory). */
interface Line {
  readonly add: (t: number, v: number) => void;
  /** The slope's standard uncertainty as a multiple of the noise. */
  readonly fitted: () => readonly [count: number, mean: number, slope: number, spread: number];
  /** How far a sample lies off, less what the line itself may be off there; 0 or no number before it has two moments. */
  readonly off: (t: number, v: number) => number;
}

function emptyLine(): Line {
  let [count, mean, moment, product, square] = [0, 0, 0, 0, 0];
  return {
    add: (t, v) => {
      count++;
      const off = t - moment;
      moment += off / count;
      mean += (v - mean) / count;
      product += off * (v - mean);
      square += off * (t - moment);
    },
    fitted: () => [count, mean, product / square, 1 / Math.sqrt(square)],
    off: (t, v) =>
      Math.abs(v - mean - (product / square) * (t - moment)) /
      Math.sqrt(1 + 1 / count + (t - moment) ** 2 / square),
  };
}
