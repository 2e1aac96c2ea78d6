import type { Recorder, Seconds, Sweep, Volts } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Bench } from './bench.js';

/** A recorder with its noise. */
export interface RecorderSet {
  readonly interval: Seconds;
  readonly low: Volts;
  readonly high: Volts;
  readonly step: Volts;
  readonly noise: Volts;
  readonly colour: 'white' | 'pink' | 'drifting';
  readonly hum: Volts;
  readonly hertz: number;
  /** The smallest visible departure by the rules, with five standard deviations of noise. */
  readonly visible: Volts;
  readonly told: Recorder;
}

const kinds = [
  { rates: [1e3, 2.5e3, 10e3, 25e3], bits: 8, below: 1 / 8 },
  { rates: [500, 860, 1000], bits: 10, below: 0 },
  { rates: [1e3, 3e3], bits: 12, below: 1 / 2 },
  { rates: [2e3, 5e3, 20e3], bits: 16, below: 1 / 2 },
  { rates: [1e3, 4e3], bits: 24, below: 1 / 2 },
] as const;

/** A recorder whose range holds what the source can give. */
export function drawRecorder({ source, span }: Bench, random: RandomStream): RecorderSet {
  const { rates, bits, below } = random.pick(kinds);
  const width = (1.15 * source) / (1 - below);
  const step = width / 2 ** bits;
  const low = -below * width;
  const high = low + width - step;
  const noise = Math.max(random.logBetween(2e-4, 5e-3) * span, step / 4);
  const hum = random.chance(0.3) ? random.logBetween(5e-4, 5e-3) * span : 0;
  return {
    interval: 1 / random.pick<number>(rates),
    low,
    high,
    step,
    noise,
    colour: random.pick(['white', 'white', 'pink', 'drifting'] as const),
    hum,
    hertz: random.pick([50, 60]),
    visible: Math.max(
      5 * Math.hypot(noise, step / Math.sqrt(12)),
      3 * step,
      0.015 * span,
      2.5 * hum,
    ),
    told: {
      ...(random.chance(0.6) && { resolution: step }),
      ...(random.chance(0.6) && { range: { low, high } }),
      uncertainty: 0.002 * source,
    },
  };
}

/** What the recorder writes down of a voltage, each of its samples being so many grid steps apart. */
export function recorded(
  set: RecorderSet,
  volts: Float64Array,
  stride: number,
  random: RandomStream,
): Sweep {
  const { interval, low, high, step, noise, hum, hertz } = set;
  const samples = Math.floor(volts.length / stride);
  const gain = 1 + random.between(-0.001, 0.001);
  const next = coloured(set, random);
  const signal = Float64Array.from({ length: samples }, (_, i) => {
    const phase = 2 * Math.PI * hertz * i * interval;
    const pickUp = hum * (Math.sin(phase) + 0.2 * Math.sin(3 * phase + 1));
    const read = volts[i * stride]! * gain + noise * next() + pickUp;
    return low + step * Math.round((Math.min(high, Math.max(low, read)) - low) / step);
  });
  return { time: Float64Array.from(signal, (_, i) => i * interval), signal };
}

/** Noise of size 1: white, with slower parts, or on a level that drifts. */
function coloured({ colour, interval }: RecorderSet, random: RandomStream): () => number {
  let [fast, slow, level] = [0, 0, 0];
  return () => {
    if (colour === 'white') return random.normal();
    if (colour === 'drifting') {
      level += 0.02 * Math.sqrt(interval) * random.normal();
      return level + random.normal();
    }
    fast = 0.9 * fast + 0.436 * random.normal();
    slow = 0.995 * slow + 0.1 * random.normal();
    return 0.7 * random.normal() + 0.5 * fast + 0.5 * slow;
  };
}
