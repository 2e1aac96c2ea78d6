import type { Volts } from '../units.js';
import { strideOver } from './limits.js';

/**
 * The recorder's step, found as the smallest difference between readings that occur, where the readings
 * repeat; 0 where nearly each is a value of its own.
 */
export function foundResolution(signal: Float64Array): Volts {
  const stride = strideOver(signal.length);
  const values = new Float64Array(Math.ceil(signal.length / stride));
  for (let i = 0; i < values.length; i++) values[i] = signal[i * stride]!;
  values.sort();
  const scale = Math.max(Math.abs(values[0]!), Math.abs(values[values.length - 1]!));
  let step = Number.POSITIVE_INFINITY;
  let distinct = 1;
  for (let i = 1; i < values.length; i++) {
    const difference = values[i]! - values[i - 1]!;
    if (difference <= 1e-9 * scale) continue;
    distinct++;
    step = Math.min(step, difference);
  }
  return distinct > 1 && distinct < values.length / 2 ? step : 0;
}
