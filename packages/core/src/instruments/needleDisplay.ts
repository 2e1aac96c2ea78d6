import type { SweepLike } from '../capture/sweep.js';
import type { NeedleMeter } from './instrument.js';
import { needleStep } from './needleMovement.js';
import { leastStep } from './sampling.js';
import { usualMovement } from './usualValues.js';
import { watched } from './watched.js';

/** The stops stand a little beyond the scale, as parts of it; common practice, no source. */
const stops = { low: -0.03, high: 1.05 };

/**
 * Where a needle stands at each sample of a sweep, V: its movement follows the signal, straight between its samples, exactly; at a stop it rests
 * until it is pulled away. It begins at rest on the first reading.
 *
 * @throws InputError for what no sweep and no meter can be.
 *
 * @example
 * const meter = { kind: 'needle-meter', name: 'needle', ohmsPerVolt: 20e3, range: 5 } as const;
 * const still = { time: Float64Array.of(0, 1, 2), signal: Float64Array.of(2, 2, 2) };
 * Array.from(needleDisplay(meter, still)) // => [2, 2, 2]
 */
export function needleDisplay(meter: NeedleMeter, sweep: SweepLike): Float64Array {
  const { time, signal } = watched(meter, sweep, ['needle-meter']);
  const { range, movement = usualMovement } = meter;
  const [lowest, highest] = [stops.low * range, stops.high * range];
  const shown = new Float64Array(time.length);
  let deflection = Math.min(highest, Math.max(lowest, signal[0]!));
  let speed = 0;
  let step = needleStep(movement, 1);
  shown[0] = deflection;
  for (let i = 1; i < time.length; i++) {
    const seconds = time[i]! - time[i - 1]!;
    if (seconds > leastStep) {
      // Stamps of one interval differ in their last digits.
      if (Math.abs(seconds - step.seconds) > 1e-9 * seconds) step = needleStep(movement, seconds);
      const from = signal[i - 1]!;
      const slope = (signal[i]! - from) / seconds;
      const lag = step.lag * slope;
      const offset = deflection - from + lag;
      const drift = speed - slope;
      deflection = signal[i]! - lag + offset * step.kept + drift * step.gained;
      speed = slope + drift * step.slowed - offset * step.pulled;
      if (deflection <= lowest || deflection >= highest) {
        deflection = deflection <= lowest ? lowest : highest;
        speed = 0;
      }
    }
    shown[i] = deflection;
  }
  return shown;
}
