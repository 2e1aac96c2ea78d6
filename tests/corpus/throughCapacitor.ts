import type { Sweep } from '@truesweep/core';

/** What a recorder shows whose input is coupled through a capacitor: a first-order high-pass, its output held at each sample. */
export function throughCapacitor({ time, signal, ...rest }: Sweep, seconds: number): Sweep {
  const coupled = new Float64Array(signal.length);
  for (let i = 1; i < signal.length; i++) {
    const kept = Math.exp(-(time[i]! - time[i - 1]!) / seconds);
    coupled[i] = kept * coupled[i - 1]! + (signal[i]! - signal[i - 1]!);
  }
  return { ...rest, time, signal: coupled };
}
