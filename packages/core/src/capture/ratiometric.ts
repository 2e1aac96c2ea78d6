import type { HookUpLevels } from '../expectation/hookUpLevels.js';
import { median } from '../statistics/median.js';
import type { Fraction, Seconds, Volts } from '../units.js';
import type { Recorder, ReferenceReadings } from './captureQuality.js';
import type { Sweep } from './sweep.js';

/** A sweep as it would have been with the stated supply and a true instrument. */
export interface Ratiometric {
  readonly sweep: Sweep;
  /** `recorded`: by a supply channel; `read`: by readings of source and zero; `assumed`: as stated. */
  readonly supply: 'recorded' | 'read' | 'assumed';
  /** Standard uncertainty that the instrument brings to a reading, V; left out where nothing is known of it. */
  readonly uncertainty?: Volts;
  /** Farthest that the recorded supply strayed from its middle, as a fraction of it. */
  readonly supplyStray?: Fraction;
  /** How long the recorded supply was missing, s. */
  readonly supplyLost?: Seconds;
}

/** Below this part of what it must be the supply is missing, and the signal means nothing. */
const leastSupply = 0.2;

/**
 * Judges the signal as a ratio where the recording allows: each sample divided by the supply recorded with it, or the
 * instrument's offset, gain and their drift taken out by readings of source and zero before and after. Samples
 * without a supply are left out, which makes a gap.
 *
 * The voltages that source and supply shall have are those of the hook-up.
 */
export function ratiometric(
  sweep: Sweep,
  { source, supply }: Pick<HookUpLevels, 'source' | 'supply'>,
  recorder: Recorder,
): Ratiometric {
  if (sweep.supply && supply !== undefined && supply > 0) {
    return bySupply(sweep, sweep.supply, supply, recorder);
  }
  const before = recorder.before ?? recorder.after;
  const after = recorder.after ?? recorder.before;
  if (before && after) return byReadings(sweep, before, after, source, recorder);
  const { uncertainty } = recorder;
  return { sweep, supply: 'assumed', ...(uncertainty !== undefined && { uncertainty }) };
}

function bySupply(
  { time, signal, stretches }: Sweep,
  supply: Float64Array,
  nominal: Volts,
  { uncertainty }: Recorder,
): Ratiometric {
  const least = leastSupply * nominal;
  const kept = supply.reduce((count, volts) => count + (volts >= least ? 1 : 0), 0);
  const ratioTime = new Float64Array(kept);
  const ratioSignal = new Float64Array(kept);
  let supplyLost = 0;
  let to = 0;
  for (let i = 0; i < time.length; i++) {
    if (supply[i]! >= least) {
      ratioTime[to] = time[i]!;
      ratioSignal[to++] = signal[i]! * (nominal / supply[i]!);
    } else if (i > 0) supplyLost += time[i]! - time[i - 1]!;
  }
  const usual = median(supply.filter((volts) => volts >= least));
  const supplyStray = supply.reduce(
    (most, volts) => Math.max(most, Math.abs(volts / usual - 1)),
    0,
  );
  return {
    sweep: {
      time: ratioTime,
      signal: ratioSignal,
      ...(stretches && { stretches }),
    },
    supply: 'recorded',
    ...(uncertainty !== undefined && { uncertainty }),
    supplyStray: Number.isFinite(supplyStray) ? supplyStray : 1,
    supplyLost,
  };
}

function byReadings(
  sweep: Sweep,
  before: ReferenceReadings,
  after: ReferenceReadings,
  source: Volts,
  { resolution = 0 }: Recorder,
): Ratiometric {
  const { time, signal } = sweep;
  const start = time[0]!;
  const duration = time[time.length - 1]! - start;
  const corrected = signal.map((volts, i) => {
    const part = (time[i]! - start) / duration;
    const zero = before.zero + (after.zero - before.zero) * part;
    const full = before.source + (after.source - before.source) * part;
    return ((volts - zero) / (full - zero)) * source;
  });
  // Rounding of the readings, and a drift between them that need not have been even.
  const drift = Math.max(
    Math.abs(after.zero - before.zero),
    Math.abs(after.source - before.source),
  );
  const uncertainty = Math.hypot(resolution / Math.sqrt(6), drift / (2 * Math.sqrt(3)));
  return { sweep: { ...sweep, signal: corrected }, supply: 'read', uncertainty };
}
