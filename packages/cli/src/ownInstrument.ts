import type { Logger, Seconds } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';

/** A step that no job tells is taken for one of so many bits; common practice, no source. */
const usualBits = 12;

/**
 * A job's own instrument as a logger, as far as the job tells it: its range, else from below common to above the source; its resolution, else 12
 * bits over that.
 */
export function ownInstrument({ instrument, hookUp }: Job, interval: Seconds): Logger {
  const { name, inputResistance, resolution, range } = instrument;
  const { volts } = hookUp.source;
  const { low, high } = range ?? { low: -0.1 * volts, high: 1.2 * volts };
  return {
    kind: 'logger',
    name,
    inputOhms: inputResistance,
    range: { low, high },
    bits: resolution ? bitsOf(high - low, resolution) : usualBits,
    interval,
  };
}

/** Bits with steps no finer than the resolution: from 1 to 32. */
function bitsOf(span: number, resolution: number): number {
  return Math.min(32, Math.max(1, Math.floor(Math.log2(span / resolution) + 1e-9)));
}
