import type { Seconds, Volts } from '@truesweep/core';
import type { RecorderPlan, ToldRecorder } from '../simulator/plan.js';
import type { RandomStream } from '../simulator/randomStream.js';

export type RecorderName = RecorderPlan['name'];

/** Recorders that are fast enough where nothing else is wrong. */
export const fastRecorders: readonly RecorderName[] = [
  'oscilloscope',
  '12-bit logger',
  '16-bit recorder',
];

interface Instrument {
  readonly interval: Seconds;
  readonly aperture: Seconds;
  /** Widths of the ranges that it offers, V, narrowest first. */
  readonly ranges: readonly Volts[];
  /** How far below zero a range begins, as a share of its width. */
  readonly below: number;
  readonly steps: number;
  /** Standard uncertainty: of the reading, and of the range's width. */
  readonly ofReading: number;
  readonly ofRange: number;
}

function instrument(name: RecorderName, random: RandomStream): Instrument {
  switch (name) {
    case 'oscilloscope': {
      const interval = 1 / random.pick([1e3, 2e3, 5e3, 10e3, 20e3]);
      return {
        interval,
        aperture: 0,
        ranges: [4, 8, 16, 40],
        below: 1 / 8,
        steps: 256,
        ofReading: 0.005,
        ofRange: 0.001,
      };
    }
    case '12-bit logger': {
      const interval = 1 / random.pick([500, 1000, 2000]);
      return {
        interval,
        aperture: 0,
        ranges: [5, 10, 20],
        below: 0,
        steps: 4096,
        ofReading: 0.001,
        ofRange: 0.0005,
      };
    }
    case '16-bit recorder': {
      const interval = 1 / random.pick([1e3, 2e3, 5e3, 10e3]);
      return {
        interval,
        aperture: 0,
        ranges: [20, 40],
        below: 0.5,
        steps: 65_536,
        ofReading: 0.0005,
        ofRange: 0.0001,
      };
    }
    case 'slow logger': {
      const interval = 1 / random.pick([2, 5, 10, 20, 50]);
      const aperture = random.chance(0.5) ? 0 : Math.min(0.02, interval);
      return {
        interval,
        aperture,
        ranges: [5, 10, 20],
        below: 0,
        steps: 4096,
        ofReading: 0.001,
        ofRange: 0.0005,
      };
    }
    case 'meter': {
      const interval = 1 / random.between(3, 10);
      const aperture = Math.min(random.between(0.02, 0.2), 0.9 * interval);
      return {
        interval,
        aperture,
        ranges: [6, 20],
        below: 0,
        steps: 6000,
        ofReading: 0.002,
        ofRange: 0.0002,
      };
    }
  }
}

export interface RecorderWish {
  readonly names: readonly RecorderName[];
  /** Highest voltage that it should show, and the span between the stops. */
  readonly top: Volts;
  readonly span: Volts;
  readonly noisy: boolean;
  readonly hum: boolean;
  /** Probability that the technician left the range wider than needed. */
  readonly careless: number;
}

/** A recorder set up by a technician. */
export function drawRecorder(wish: RecorderWish, random: RandomStream): RecorderPlan {
  const { top, span } = wish;
  const name = random.pick(wish.names);
  const { ranges, below, steps, ofReading, ofRange, ...when } = instrument(name, random);
  const fits = ranges.findIndex((width) => width * (1 - below) >= 1.04 * top);
  const chosen = fits < 0 ? ranges.length - 1 : fits;
  const width =
    ranges[Math.min(ranges.length - 1, chosen + (random.chance(wish.careless) ? 1 : 0))]!;
  const step = width / steps;
  const uncertainty = Math.hypot((ofReading * top) / 2, ofRange * width);
  const noise = wish.noisy
    ? random.between(0.008, 0.025) * span
    : random.logBetween(0.0002, 0.006) * span;
  const fast = when.interval < 0.01;
  return {
    name,
    ...when,
    low: -below * width,
    high: (1 - below) * width - step,
    step,
    noise: Math.max(noise, 0.3 * step),
    ...((wish.hum || random.chance(0.3)) && { hum: drawHum(span, wish.hum, random) }),
    offset: ofRange * width * random.between(-1, 1),
    gain: ofReading * random.between(-1, 1),
    uncertainty,
    jitter: fast && random.chance(0.3) ? random.between(0.01, 0.2) * when.interval : 0,
    gaps: [],
  };
}

function drawHum(
  span: Volts,
  strong: boolean,
  random: RandomStream,
): NonNullable<RecorderPlan['hum']> {
  return {
    volts: (strong ? random.between(0.004, 0.03) : random.logBetween(0.0005, 0.008)) * span,
    hertz: random.pick([50, 60]),
    harmonics: [
      random.between(0, 0.1),
      random.between(0, 0.3),
      random.between(0, 0.05),
      random.between(0, 0.15),
    ],
  };
}

/** What a user passes on of the recorder: often not all of it. */
export function tellRecorder(
  { step, low, high, uncertainty }: RecorderPlan,
  random: RandomStream,
): ToldRecorder {
  return {
    ...(random.chance(0.7) && { resolution: step }),
    ...(random.chance(0.7) && { range: { low, high } }),
    ...(random.chance(0.7) && { uncertainty }),
  };
}
