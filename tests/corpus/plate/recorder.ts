import type { Recorder, Seconds, Sweep, Volts } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import { type Bench, restLevel } from './bench.js';

export interface RecorderSet {
  readonly interval: Seconds;
  readonly stamps: 'even' | 'jitter' | 'whole ms';
  readonly averaged: boolean;
  readonly bits: number;
  readonly low: Volts;
  readonly high: Volts;
  readonly step: Volts;
  readonly noise: Volts;
  readonly noiseName: string;
  readonly hum: Volts;
  readonly hertz: number;
  readonly gain: number;
  readonly told: Recorder;
}

const rates = [100, 200, 500, 1e3, 1e3, 1e3, 2e3, 2.5e3, 5e3, 10e3, 20e3, 50e3, 100e3];

/** A recorder whose range holds the whole source. */
export function drawRecorder({ nominal, span }: Bench, random: RandomStream): RecorderSet {
  const isSlow = random.chance(0.05);
  const rate = isSlow ? random.pick([12, 20, 30, 60]) : random.pick(rates);
  const bits = random.pick(rate > 20e3 ? [8, 8, 12] : [8, 10, 10, 12, 12, 14, 16]);
  const most = 1.12 * Math.max(nominal.volts, restLevel(nominal));
  const low = random.chance(0.4) ? -random.between(0.05, 0.25) * most : -0.02 * most;
  const step = (most - low) / 2 ** bits;
  const noiseName = random.pick(['none', 'low', 'low', 'middle', 'high'] as const);
  const [least, utmost] = {
    none: [0, 0],
    low: [3e-4, 1.5e-3],
    middle: [1.5e-3, 4e-3],
    high: [4e-3, 0.009],
  }[noiseName] as [number, number];
  const stamps = random.chance(0.12) ? 'jitter' : random.chance(0.14) ? 'whole ms' : 'even';
  const averaged = rate <= 1e3 && random.chance(isSlow ? 0.6 : 0.15);
  return {
    interval: 1 / rate,
    stamps: stamps === 'whole ms' && rate > 10e3 ? 'even' : stamps,
    averaged,
    bits,
    low,
    high: most,
    step,
    noise: random.between(least, utmost) * span,
    noiseName,
    hum: random.chance(0.22) ? random.logBetween(5e-4, 0.012) * span : 0,
    hertz: random.pick([50, 60]),
    gain: 1 + random.between(-1, 1) * 1e-3,
    told: {
      ...(random.chance(0.6) && { resolution: step }),
      ...(random.chance(0.6) && { range: { low, high: most } }),
      ...(averaged && { sampling: 'averaged' as const }),
      uncertainty: 0.0015 * nominal.volts,
    },
  };
}

/** The smallest visible departure: k σ, 3 steps, 1.5 % of span, 2.5 times the ripple. */
export function visibleOf(set: RecorderSet, span: Volts, samples: number): Volts {
  const { noise, step, hum } = set;
  return Math.max(
    upperQuantile(0.005 / (2 * samples)) * Math.hypot(noise, step / Math.sqrt(12)),
    3 * step,
    0.015 * span,
    2.5 * hum,
  );
}

/** Where the normal distribution leaves so little above, for tails below 2 %; continued fraction of its tail, from memory. */
function upperQuantile(tail: number): number {
  let [low, high] = [2, 9];
  for (let i = 0; i < 40; i++) {
    const z = (low + high) / 2;
    let rest = z;
    for (let n = 30; n > 0; n--) rest = z + n / rest;
    if (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / rest > tail) low = z;
    else high = z;
  }
  return low;
}

/** The instants of the samples, s on the grid's clock. */
export function instantsOf(
  set: RecorderSet,
  from: Seconds,
  to: Seconds,
  random: RandomStream,
): Float64Array {
  const { interval, stamps } = set;
  const samples = Math.max(2, Math.floor((to - from) / interval));
  return Float64Array.from({ length: samples }, (_, i) => {
    const early = stamps === 'jitter' && i > 0 ? random.between(0, 0.4) : 0;
    return from + (i + 1 - early) * interval;
  });
}

/** What reaches the converter at these instants, without noise. */
export function heldAt(
  set: RecorderSet,
  instants: Float64Array,
  volts: Float64Array,
  step: Seconds,
): Float64Array {
  const last = volts.length - 1;
  const at = (time: Seconds): Volts => {
    const place = Math.min(last, Math.max(0, time / step));
    const below = Math.min(last - 1, Math.floor(place));
    return volts[below]! + (place - below) * (volts[below + 1]! - volts[below]!);
  };
  if (!set.averaged) return instants.map(at);
  const points = Math.min(200, Math.max(8, Math.round(set.interval / 2e-4)));
  return instants.map((time) => {
    let sum = 0;
    for (let i = 0; i < points; i++) sum += at(time - (set.interval * (i + 0.5)) / points);
    return sum / points;
  });
}

/** What it writes down. */
export function written(
  set: RecorderSet,
  instants: Float64Array,
  held: Float64Array,
  origin: Seconds,
  random: RandomStream,
): Sweep {
  const { low, high, step, noise, hum, hertz, gain, stamps } = set;
  const phase = random.between(0, 2 * Math.PI);
  const third = hum > 0 && random.chance(0.5) ? 0.2 : 0;
  const signal = held.map((value, i) => {
    const turn = 2 * Math.PI * hertz * instants[i]! + phase;
    const ripple = hum > 0 ? hum * (Math.sin(turn) + third * Math.sin(3 * turn)) : 0;
    const read = value * gain + ripple + (noise > 0 ? noise * random.normal() : 0);
    return low + step * Math.round((Math.min(high, Math.max(low, read)) - low) / step);
  });
  const time = instants.map((at) => {
    const stamp = at - origin;
    return stamps === 'whole ms' ? Math.floor(stamp * 1000) / 1000 : stamp;
  });
  return { time, signal };
}
