import type { Sweep } from '../capture/sweep.js';
import type { Seconds } from '../units.js';
import { leastStep } from './sampling.js';

/** A signal behind a single pole, at its samples: exact for a signal that is straight between them. It begins settled. */
export function roundedByPole({ time, signal }: Sweep, timeConstant: Seconds): Float64Array {
  if (timeConstant === 0) return signal;
  const rounded = new Float64Array(signal.length);
  let level = signal[0]!;
  let [seconds, kept] = [0, 1];
  rounded[0] = level;
  for (let i = 1; i < time.length; i++) {
    const step = time[i]! - time[i - 1]!;
    if (step > leastStep) {
      if (Math.abs(step - seconds) > 1e-9 * step)
        [seconds, kept] = [step, Math.exp(-step / timeConstant)];
      const lag = (timeConstant * (signal[i]! - signal[i - 1]!)) / step;
      level = signal[i]! - lag + (level - signal[i - 1]! + lag) * kept;
    }
    rounded[i] = level;
  }
  return rounded;
}
