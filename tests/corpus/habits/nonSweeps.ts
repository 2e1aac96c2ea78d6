import type { Seconds, Sweep, Volts } from '@truesweep/core';
import { type RandomStream, randomStream } from '../simulator/randomStream.js';
import { runningMedian } from './recorder.js';

/** Readings that a sound sensor gives on a typical bench, V: closed 0.5, open 4.0. */
const closed: Volts = 0.5;
const open: Volts = 4;

/** A signal over time, 0 at the closed reading and 1 at the open one. */
type Signal = (seconds: Seconds, i: number) => number;

interface Made {
  readonly signal: Signal | Float64Array;
  /** A hand could have moved a sound sensor so. */
  readonly mayPass?: boolean;
  /** S/s, and s. */
  readonly rate?: number;
  readonly seconds?: Seconds;
  readonly time?: Float64Array;
  /** Its noise is in it; its recorder is a fine one. */
  readonly isQuiet?: boolean;
}

const smooth = (u: number): number => u * u * (3 - 2 * u);
const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/** Strokes of 1 s with rests of 1 s, then a fall. */
function plainSweep(t: Seconds): number {
  const place = t % 5;
  if (place < 1) return 0;
  if (place < 2) return smooth(place - 1);
  if (place < 3) return 1;
  if (t % 10 > 5) return place < 3.04 ? 1 - ((place - 3) / 0.04) ** 2 : 0;
  return place < 4 ? 1 - smooth(place - 3) : 0;
}

/** The plain sweep and its noise through a running mean or median of so many samples, which leaves its mark on the noise. */
function smoothed(
  rate: number,
  half: number,
  isMedian: boolean,
  random: RandomStream,
): Float64Array {
  const noise = random.logBetween(1e-3, 5e-3);
  const raw = Float64Array.from(
    { length: 10 * rate },
    (_, i) => plainSweep(i / rate) + noise * random.normal(),
  );
  if (isMedian) return runningMedian(raw, half);
  const sums = new Float64Array(raw.length + 1);
  for (let i = 0; i < raw.length; i++) sums[i + 1] = sums[i]! + raw[i]!;
  return raw.map((_, i) => {
    const [from, to] = [Math.max(0, i - half), Math.min(raw.length, i + half + 1)];
    return (sums[to]! - sums[from]!) / (to - from);
  });
}

const makers: Readonly<Record<string, (random: RandomStream) => Made>> = {
  'white noise': (random) => ({ signal: () => clamp(0.5 + 0.25 * random.normal()) }),
  'random walk': (random) => {
    let level = 0.5;
    const size = random.logBetween(0.003, 0.05);
    return {
      signal: () => {
        level += size * random.normal();
        level = level < 0 ? -level : level > 1 ? 2 - level : level;
        return level;
      },
    };
  },
  'square wave': (random) => {
    const edge = random.logBetween(0.002, 0.1);
    const half = Math.max(2 * edge, random.logBetween(0.05, 1));
    return {
      signal: (t) => {
        const place = t % (2 * half);
        const up = clamp(place / edge);
        return place < half ? up : 1 - clamp((place - half) / edge);
      },
    };
  },
  ladder: (random) => {
    const steps = random.whole(35, 45);
    const each = random.between(0.02, 0.1);
    return {
      signal: (t) => {
        const place = Math.floor(t / each) % (2 * steps + 20);
        return place <= steps ? place / steps : clamp((2 * steps + 10 - place) / steps);
      },
    };
  },
  speech: (random) => {
    const tones = Array.from(
      { length: 12 },
      () => [random.between(90, 900), random.between(0, 6)] as const,
    );
    const pace = random.between(2, 5);
    return {
      signal: (t) => {
        const syllable = Math.max(0, Math.sin(Math.PI * pace * t) * Math.sin(1.7 * t + 1));
        return clamp(
          0.5 +
            0.12 *
              syllable *
              tones.reduce(
                (sum, [hertz, phase]) => sum + Math.sin(2 * Math.PI * hertz * t + phase),
                0,
              ),
        );
      },
      rate: 8000,
      seconds: 4,
    };
  },
  'charging curve': (random) => {
    const tau = random.logBetween(0.02, 0.5);
    const half = Math.max(0.3, 6 * tau);
    return {
      signal: (t) => {
        const place = t % (2 * half);
        return place < half ? 1 - Math.exp(-place / tau) : Math.exp(-(place - half) / tau);
      },
    };
  },
  'clipped sine': (random) => {
    const hertz = random.logBetween(0.3, 60);
    const over = random.between(1.2, 4);
    // At this speed it leaves its ends at once, spans per second.
    const speed = Math.PI * hertz * Math.sqrt(over * over - 1);
    return {
      signal: (t) => clamp(0.5 + 0.5 * over * Math.sin(2 * Math.PI * hertz * t)),
      // A track that is flat beside its stops hides how a hand's stroke of 0.2 s began, up to its middle (1.5/T).
      mayPass: speed <= 1.5 / 0.2,
    };
  },
  sine: (random) => {
    const hertz = random.logBetween(0.2, 200);
    return {
      signal: (t) => 0.5 - 0.5 * Math.cos(2 * Math.PI * hertz * t),
      rate: 4000,
      seconds: 6,
      mayPass: hertz <= 3,
    };
  },
  'sine beyond the ends': (random) => {
    const hertz = random.logBetween(0.2, 50);
    const size = random.between(0.65, 1.2);
    return { signal: (t) => 0.5 - size * Math.cos(2 * Math.PI * hertz * t) };
  },
  triangle: (random) => {
    const hertz = random.logBetween(0.2, 50);
    // A motor's rig turns so.
    return { signal: (t) => 1 - Math.abs(1 - ((2 * hertz * t) % 2)), mayPass: hertz <= 5 };
  },
  'sweep through a median of 50 ms': (random) => ({
    signal: smoothed(1000, 25, true, random),
    rate: 1000,
    isQuiet: true,
  }),
  'sweep through a mean of 50 ms': (random) => ({
    signal: smoothed(1000, 25, false, random),
    rate: 1000,
    isQuiet: true,
  }),
  constant: (random) => {
    const level = random.pick([0, 0.5, 1, 1.3, random.uniform()]);
    return { signal: () => level };
  },
  'two samples': () => ({ signal: Float64Array.of(0, 1), rate: 1 }),
  'one sample': () => ({ signal: Float64Array.of(0), rate: 1 }),
  'two nanoseconds': (random) => ({
    signal: (_t, i) => plainSweep((10 * i) / 4000),
    time: Float64Array.from(
      { length: 4000 },
      (_, i) => (i / 4000) * 2e-9 + (random.chance(0.5) ? 0 : 1e-15),
    ),
  }),
  'clock of 4 GHz': () => ({
    signal: (_t, i) => plainSweep((10 * i) / 8000),
    rate: 4e9,
    seconds: 2e-6,
  }),
  chirp: (random) => {
    const grows = random.between(5, 40);
    return { signal: (t) => 0.5 - 0.5 * Math.cos(2 * Math.PI * (0.3 + grows * t) * t), seconds: 8 };
  },
  bursts: (random) => {
    const hertz = random.between(30, 400);
    return {
      signal: (t) => (t % 0.7 < 0.2 ? 0.5 + 0.5 * Math.sin(2 * Math.PI * hertz * t) : 0),
      rate: 5000,
      seconds: 5,
    };
  },
  sawtooth: (random) => {
    const seconds = random.logBetween(0.05, 2);
    // Up by hand, down by nothing that falls.
    return { signal: (t) => (t / seconds) % 1 };
  },
};

/** Names of what is played, in the order of seeds. */
export const nonSweepNames: readonly string[] = Object.keys(makers);

/**
 * A recording of something else than a sensor's sweep, scaled to a typical bench. None but those that a hand could have made may
 * be judged `pass`.
 */
export function nonSweep(seed: number): { name: string; sweep: Sweep; mayPass: boolean } {
  const random = randomStream(Math.imul(seed + 5, 0x3c6ef35f) ^ 0x2f0b4c47);
  const name = nonSweepNames[seed % nonSweepNames.length]!;
  const {
    signal,
    rate = 2000,
    seconds = 10,
    mayPass = false,
    time,
    isQuiet = false,
  } = makers[name]!(random);
  const count =
    time?.length ?? (typeof signal === 'function' ? Math.round(rate * seconds) : signal.length);
  const stamps = time ?? Float64Array.from({ length: count }, (_, i) => i / rate);
  const noise = isQuiet ? 0 : random.logBetween(1e-4, 1e-2);
  const bits = random.pick(isQuiet ? [14, 16] : [8, 10, 12, 16]);
  const step = 5.5 / 2 ** bits;
  const volts = Float64Array.from(stamps, (t, i) => {
    const share = typeof signal === 'function' ? signal(t, i) : signal[i]!;
    const read = closed + (open - closed) * share + noise * random.normal();
    return Math.round(Math.min(5.3, Math.max(-0.2, read)) / step) * step;
  });
  return { name, sweep: { time: stamps, signal: volts }, mayPass };
}
