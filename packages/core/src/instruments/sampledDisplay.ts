import type { Sweep, SweepLike } from '../capture/sweep.js';
import { noMoreThan } from '../noMoreThan.js';
import type { Volts } from '../units.js';
import type { Logger, Oscilloscope } from './instrument.js';
import { roundedByPole } from './roundedByPole.js';
import { intervalOf, poleOf, stepOf } from './sampling.js';
import { watched } from './watched.js';

/** As many samples of one sweep are drawn: what 240 MB hold. */
const mostSamples = 1e7;

/** What an oscilloscope or a logger drew of a sweep. */
export interface SampledDisplay {
  /** When each was taken, s, on the sweep's clock. */
  readonly time: Float64Array;
  /** Readings, V; of an oscilloscope that keeps peaks the lowest of each interval. */
  readonly low: Float64Array;
  /** Readings, V; of an oscilloscope that keeps peaks the highest of each interval. */
  readonly high: Float64Array;
}

/**
 * What an oscilloscope or a logger records of a sweep, in steps of its converter and held at the ends of its range. An oscilloscope takes
 * as many samples as its memory holds in a record: a slow one can undersample. What a
 * capacitor in a logger's input holds back, sags toward zero.
 *
 * @throws InputError for what no sweep and no instrument can be.
 *
 * @example
 * const scope = { kind: 'oscilloscope', name: 'scope', inputOhms: 1e6, range: { low: 0, high: 8 }, bits: 8, record: 4, memory: 8, fastest: 1e-9 } as const;
 * const rising = { time: Float64Array.of(0, 2), signal: Float64Array.of(0, 4) };
 * Array.from(sampledDisplay(scope, rising).low) // => [0, 1, 2, 3, 4]
 */
export function sampledDisplay(
  instrument: Oscilloscope | Logger,
  given: SweepLike,
): SampledDisplay {
  const sweep = watched(instrument, given, ['oscilloscope', 'logger']);
  const interval = intervalOf(instrument);
  const signal = roundedByPole(coupled(instrument, sweep), poleOf(instrument));
  const { time } = sweep;
  const [first, last] = [time[0]!, time.at(-1)!];
  const size = Math.floor((last - first) / interval + 1e-9) + 1;
  const field = instrument.kind === 'logger' ? 'interval' : 'record';
  noMoreThan(mostSamples, size, `instrument.${field}`, 'samples of this sweep');
  const drawn = {
    time: new Float64Array(size),
    low: new Float64Array(size),
    high: new Float64Array(size),
  };
  const keepsPeaks = instrument.kind === 'oscilloscope' && instrument.keepsPeaks;
  const converted = converter(instrument);
  let before = 0;
  for (let i = 0; i < size; i++) {
    const at = first + i * interval;
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    while (before < time.length - 2 && time[before + 1]! <= at) {
      before += 1;
      if (!keepsPeaks) continue;
      low = Math.min(low, signal[before]!);
      high = Math.max(high, signal[before]!);
    }
    const span = time[before + 1]! - time[before]!;
    const part = span > 0 ? Math.min(1, Math.max(0, (at - time[before]!) / span)) : 1;
    const volts = signal[before]! + part * (signal[before + 1]! - signal[before]!);
    drawn.time[i] = at;
    drawn.low[i] = converted(Math.min(low, volts));
    drawn.high[i] = converted(Math.max(high, volts));
  }
  return drawn;
}

/** The sweep less what a capacitor in the input holds back: its slow part. */
function coupled(instrument: Oscilloscope | Logger, sweep: Sweep): Sweep {
  if (instrument.kind !== 'logger' || instrument.highPass === undefined) return sweep;
  const held = roundedByPole(sweep, instrument.highPass);
  return { ...sweep, signal: sweep.signal.map((volts, i) => volts - held[i]!) };
}

function converter(instrument: Oscilloscope | Logger): (volts: Volts) => Volts {
  const { low, high } = instrument.range;
  const step = stepOf(instrument);
  const most = 2 ** instrument.bits - 1;
  return (volts) =>
    low + step * Math.min(most, Math.max(0, Math.round((Math.min(high, volts) - low) / step)));
}
