import type { Fraction, Recorder, Seconds, Sweep, Volts } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/** How an instrument makes rows of what it samples, `rows` of its samples at a time. */
export interface Form {
  readonly kind: 'picked' | 'moving average' | 'median' | 'pairs' | 'lines';
  readonly rows: number;
}

const stampings = [
  ...(['milliseconds', 'milliseconds', '10 ms', 'jittered', 'late', 'batches'] as const),
  ...(['twice', 'backwards', 'wrapped', 'drifting', 'drifting'] as const),
];
const losses = ['rows lost', 'gaps', 'rows repeated', 'readings held', 'on change'] as const;

export interface HabitRecorder {
  readonly name: string;
  /** Of its samples. */
  readonly interval: Seconds;
  /** Of the grid that the world is played on; samples are so many of its steps apart. */
  readonly step: Seconds;
  readonly stride: number;
  /** Averages over its interval. */
  readonly integrates: boolean;
  readonly form: Form;
  readonly stamps: (typeof stampings)[number] | 'even';
  readonly loss: (typeof losses)[number] | 'none';
  readonly bits: string;
  readonly resolution: Volts;
  readonly low: Volts;
  readonly high: Volts;
  readonly noise: Volts;
  readonly noiseName: string;
  readonly colour: 'white' | 'pink' | 'of the reading';
  readonly hum: Volts;
  readonly hertz: number;
  /** Longest recording, s. */
  readonly most: Seconds;
  readonly told: Recorder;
}

/** What is odd about a recorder or its export; nothing in four of ten, several things at once now and then. */
const oddities = [
  ...(['none', 'none', 'none', 'none', 'none', 'none'] as const),
  ...([
    'rate',
    'rate',
    'form',
    'form',
    'form',
    'stamps',
    'stamps',
    'stamps',
    'loss',
    'several',
  ] as const),
];
const usualRates = [...[250, 500, 860, 1e3, 1e3, 1e3, 2e3, 2e3, 2.5e3, 5e3, 5e3, 10e3, 10e3, 20e3]];
const oddRates = [60, 100, 120, 150, 200, 50e3, 200e3];

function drawRate(isOdd: boolean, random: RandomStream): { name: string; rate: number } {
  if (isOdd && random.chance(0.2)) return { name: 'meter', rate: random.between(3, 5) };
  if (isOdd && random.chance(0.25)) return { name: 'slow', rate: random.between(12, 60) };
  const rate = random.pick(isOdd ? oddRates : usualRates);
  return { name: rate < 1000 ? `${rate} S/s` : `${rate / 1000} kS/s`, rate };
}

function drawForm(rate: number, random: RandomStream): Form {
  const over = (seconds: Seconds): number => Math.round(seconds * rate);
  const long = over(random.logBetween(0.001, 0.02));
  const kind = random.pick(['moving average', 'median', 'pairs', 'lines'] as const);
  if (rate < 100) return { kind: 'picked', rows: 1 };
  if (kind === 'pairs')
    return { kind, rows: Math.max(4, over(random.pick([1e-3, 2e-3, 5e-3, 10e-3]))) };
  if (kind === 'lines') return { kind, rows: Math.max(2, over(random.logBetween(0.001, 0.02))) };
  if (long < 2) return { kind: 'picked', rows: 1 };
  // A longer median than this is none of a recorder's.
  return { kind, rows: kind === 'median' ? Math.min(401, long | 1) : long };
}

/** A recorder whose range holds what the source can give, or stops short of it where it clips. */
export function drawRecorder(
  source: Volts,
  span: Volts,
  clipsAt: Volts | undefined,
  random: RandomStream,
): HabitRecorder {
  const oddity = random.pick(oddities);
  const isOdd = (one: typeof oddity, share: number): boolean =>
    oddity === one || (oddity === 'several' && random.chance(share));
  const { name, rate } = drawRate(isOdd('rate', 0.3), random);
  const integrates = name === 'meter' || random.chance(0.15);
  const interval = 1 / rate;
  // A slow instrument's grid lets its average take in short things too.
  const stride = Math.max(1, Math.ceil(interval / (rate < 100 ? 1e-3 : rate < 3000 ? 2.5e-4 : 1)));
  const form: Form = isOdd('form', 0.7) ? drawForm(rate, random) : { kind: 'picked', rows: 1 };
  const bits = random.pick([8, 10, 12, 12, 14, 16]);
  const rounded = random.chance(0.1);
  const isBipolar = random.chance(0.3);
  const high = clipsAt ?? 1.15 * source;
  const low = isBipolar ? -high : -0.02 * source;
  const resolution = rounded ? 0.01 : (high - low) / 2 ** bits;
  const [noiseName, least, largest] = random.pick([
    ['quiet', 1e-6, 2e-5],
    ['low', 2e-4, 1e-3],
    ['low', 2e-4, 1e-3],
    ['middling', 1e-3, 3e-3],
    ['middling', 1e-3, 3e-3],
    ['high', 3e-3, 1.2e-2],
  ] as const);
  const samples = random.pick([10e3, 20e3, 20e3, 40e3]) * (rate > 50e3 ? 5 : rate > 20e3 ? 2.5 : 1);
  const sampling = {
    'moving average': undefined,
    median: undefined,
    pairs: 'peak-kept',
    lines: 'interpolated',
    picked: integrates ? 'averaged' : undefined,
  } as const;
  const isTold = random.chance(0.6) ? sampling[form.kind] : undefined;
  return {
    name,
    interval,
    step: interval / stride,
    stride,
    integrates,
    form,
    stamps: isOdd('stamps', 0.7) ? random.pick(stampings) : 'even',
    loss: isOdd('loss', 0.6) ? random.pick(losses) : 'none',
    bits: rounded ? '10 mV' : `${bits}`,
    resolution,
    low,
    high,
    noise: random.logBetween(least, largest) * span,
    noiseName,
    colour: random.pick([
      'white',
      'white',
      'pink',
      ...(noiseName === 'high' ? [] : ['of the reading' as const]),
    ] as const),
    hum: random.chance(0.3) ? random.logBetween(3e-4, 1e-2) * span : 0,
    hertz: random.pick([50, 60]) * random.between(0.999, 1.001),
    most: Math.min(random.logBetween(8, 30), samples / rate),
    told: {
      ...(random.chance(0.6) && { resolution }),
      ...(random.chance(0.6) && { range: { low, high } }),
      ...(isTold && { sampling: isTold }),
      ...(isTold === 'interpolated' && { sampledEvery: form.rows * interval }),
      uncertainty: 0.002 * source,
    },
  };
}

/** The rows of a recording: what was written, and of what part of the grid. */
export interface Recorded {
  readonly sweep: Sweep;
  /** The stamp of each row without slips of the clock, s. */
  readonly stamp: Float64Array;
  /** First and last place on the grid that each row knows of. */
  readonly first: Int32Array;
  readonly last: Int32Array;
  /** |faulty − sound| of each row without noise, V. */
  readonly departure: Float64Array;
  readonly clipped: boolean;
  /** The smallest departure that shows, V. */
  readonly visible: Volts;
  readonly noise: Volts;
}

interface Rows {
  readonly value: Float64Array;
  /** First and last sample that a row is made of. */
  readonly from: (row: number) => number;
  readonly to: (row: number) => number;
  /** Sample whose time the row bears. */
  readonly at: (row: number) => number;
}

/** Samples of the grid. */
function sampled({ stride, integrates }: HabitRecorder, grid: Float64Array): Float64Array {
  const count = Math.floor(grid.length / stride);
  return Float64Array.from({ length: count }, (_, i) => {
    if (!integrates || stride === 1) return grid[i * stride]!;
    let sum = 0;
    for (let k = 0; k < stride; k++) sum += grid[i * stride + k]!;
    return sum / stride;
  });
}

/** Rows of samples. */
function formed({ kind, rows }: Form, samples: Float64Array): Rows {
  const count = samples.length;
  const self = (row: number): number => row;
  switch (kind) {
    case 'picked':
      return { value: samples, from: self, to: self, at: self };
    case 'moving average': {
      const value = new Float64Array(count);
      let sum = samples[0]! * rows;
      for (let i = 0; i < count; i++) {
        sum += samples[i]! - samples[Math.max(0, i - rows)]!;
        value[i] = sum / rows;
      }
      return { value, from: (row) => Math.max(0, row - rows + 1), to: self, at: self };
    }
    case 'median': {
      const half = rows >> 1;
      return {
        value: runningMedian(samples, half),
        from: (row) => Math.max(0, row - half),
        to: (row) => row + half,
        at: self,
      };
    }
    case 'pairs': {
      const pairs = Math.floor(count / rows);
      const value = new Float64Array(2 * pairs);
      for (let pair = 0; pair < pairs; pair++) {
        let [least, most] = [Infinity, -Infinity];
        for (let i = pair * rows; i < (pair + 1) * rows; i++) {
          least = Math.min(least, samples[i]!);
          most = Math.max(most, samples[i]!);
        }
        value[2 * pair] = least;
        value[2 * pair + 1] = most;
      }
      const from = (row: number): number => (row >> 1) * rows;
      return { value, from, to: (row) => from(row) + rows - 1, at: from };
    }
    case 'lines': {
      const value = Float64Array.from(samples, (_, i) => {
        const left = i - (i % rows);
        const right = Math.min(count - 1, left + rows);
        return (
          samples[left]! +
          ((i - left) / Math.max(1, right - left)) * (samples[right]! - samples[left]!)
        );
      });
      return {
        value,
        from: (row) => Math.max(0, row - rows + 1),
        to: (row) => row + rows - 1,
        at: self,
      };
    }
  }
}

/** Median of a window of 2·half + 1 values, kept in order by insertion. */
export function runningMedian(values: Float64Array, half: number): Float64Array {
  const at = (i: number): number => values[Math.min(values.length - 1, Math.max(0, i))]!;
  const size = 2 * half + 1;
  const window = Float64Array.from({ length: size }, (_, k) => at(k - half)).sort();
  return Float64Array.from(values, (_, i) => {
    if (i > 0) {
      let place = 0;
      const gone = at(i - half - 1);
      const come = at(i + half);
      // Binary search for the one that leaves.
      for (let low = 0, high = size - 1; low <= high; ) {
        place = (low + high) >> 1;
        if (window[place] === gone) break;
        if (window[place]! < gone) low = place + 1;
        else high = place - 1;
      }
      while (place > 0 && window[place - 1]! > come) window[place] = window[--place]!;
      while (place < size - 1 && window[place + 1]! < come) window[place] = window[++place]!;
      window[place] = come;
    }
    return window[half]!;
  });
}

/** Noise of size 1. */
function coloured(colour: HabitRecorder['colour'], random: RandomStream): () => number {
  let [fast, slow] = [0, 0];
  if (colour !== 'pink') return random.normal;
  return () => {
    fast = 0.8 * fast + 0.6 * random.normal();
    slow = 0.99 * slow + 0.141 * random.normal();
    return 0.8 * random.normal() + 0.45 * fast + 0.4 * slow;
  };
}

/** Which rows were written, in their order. */
function written(set: HabitRecorder, value: Float64Array, random: RandomStream): number[] {
  const count = value.length;
  const all = Array.from(value, (_, i) => i);
  switch (set.loss) {
    case 'rows lost': {
      const share = random.logBetween(0.001, 0.03);
      return all.filter(() => !random.chance(share));
    }
    case 'gaps': {
      const perSecond = (set.form.kind === 'pairs' ? 2 / set.form.rows : 1) / set.interval;
      const gaps = Array.from({ length: random.whole(1, 4) }, () => {
        const from = random.uniform() * count;
        return [from, from + random.logBetween(0.005, 0.3) * perSecond] as const;
      });
      return all.filter((i) => !gaps.some(([from, to]) => i > from && i < to));
    }
    case 'rows repeated': {
      const share = random.logBetween(0.001, 0.02);
      return all.flatMap((i) => (random.chance(share) ? [i, i] : [i]));
    }
    case 'on change':
      return all.filter((i) => i === 0 || i === count - 1 || value[i] !== value[i - 1]);
    default:
      return all;
  }
}

/** The clock's own reading of true times, in place; slips come last. */
function stamped(set: HabitRecorder, time: Float64Array, random: RandomStream): Float64Array {
  const count = time.length;
  const every = set.interval * (set.form.kind === 'pairs' ? set.form.rows : 1);
  const begin = random.chance(0.3) ? random.between(1, 500) : 0;
  const wrong = random.pick([-1, 1]) * random.logBetween(1e-5, 1e-2);
  const batch = random.between(0.01, 0.06);
  const drift = set.stamps === 'drifting' ? wrong : 0;
  let last = -Infinity;
  for (let i = 0; i < count; i++) {
    let t = begin + time[i]! * (1 + drift);
    if (drift !== 0) t += 0.3 * drift * Math.sin(0.5 * t);
    if (set.stamps === 'milliseconds') t = Math.floor(t * 1000 + 1e-6) / 1000;
    if (set.stamps === '10 ms') t = Math.floor(t * 100 + 1e-6) / 100;
    if (set.stamps === 'jittered') t += random.between(-0.4, 0.4) * every;
    if (set.stamps === 'late') t += Math.min(4e-3, random.exponential(1e-3));
    if (set.stamps === 'batches')
      t = begin + Math.ceil(time[i]! / batch) * batch + 1e-6 * (i % 1000);
    // The two rows of a pair bear one stamp, and no stamp lies before the last.
    if (set.form.kind === 'pairs' && i > 0 && time[i] === time[i - 1]) t = last;
    last = Math.max(last, t);
    time[i] = last;
  }
  if (set.stamps === 'twice') for (let i = 1; i < count; i += 2) time[i] = time[i - 1]!;
  const slipped = time.slice();
  if (set.stamps === 'backwards')
    for (let i = random.whole(10, 2500); i < count; i += random.whole(1500, 4000))
      slipped[i] = Math.max(begin, time[i - 1]! - random.between(0.5, 4) * every);
  if (set.stamps === 'wrapped') {
    const wrap = random.between(0.4, 0.9) * (time[count - 1]! - begin);
    for (let i = 0; i < count; i++) slipped[i] = (time[i]! - begin) % wrap;
  }
  return slipped;
}

/** What the recorder writes down of the grid's voltages. */
export function record(
  set: HabitRecorder,
  faulty: Float64Array,
  sound: Float64Array,
  isRecorded: (place: number) => boolean,
  supply: Float64Array | undefined,
  span: Volts,
  random: RandomStream,
): Recorded {
  const { stride, interval, form, low, high, resolution, noise, hum, hertz } = set;
  const gain = 1 + random.between(-0.0005, 0.0005);
  const amplified = (grid: Float64Array): Float64Array =>
    sampled(set, grid).map((volts) => volts * gain);
  const clean = amplified(faulty);
  const withoutFault = faulty === sound ? undefined : formed(form, amplified(sound)).value;
  const rows = formed(form, clean);
  const next = coloured(set.colour, random);
  const noisy = Float64Array.from(clean, (volts, i) => {
    const phase = 2 * Math.PI * hertz * i * interval;
    const pickUp =
      hum === 0
        ? 0
        : hum * (Math.sin(phase) + 0.25 * Math.sin(3 * phase + 1) + 0.1 * Math.sin(5 * phase));
    const size = set.colour === 'of the reading' ? (noise * Math.abs(volts)) / span : noise;
    return volts + size * next() + pickUp;
  });
  const value = formed(form, noisy).value;
  const round = (volts: Volts): Volts => {
    const inRange = Math.min(high, Math.max(low, volts));
    return set.bits === '10 mV'
      ? Math.round(inRange * 100) / 100
      : low + resolution * Math.round((inRange - low) / resolution);
  };
  // Lines between readings are drawn after these were rounded, and mostly written in full.
  const quantised = form.kind === 'lines' ? formed(form, noisy.map(round)).value : value.map(round);
  if (set.loss === 'readings held')
    for (let i = 1; i < quantised.length; i++)
      if (random.chance(0.01)) quantised[i] = quantised[i - 1]!;
  const kept = written(set, quantised, random).filter((row) => isRecorded(rows.at(row) * stride));
  const time = Float64Array.from(kept, (row) => rows.at(row) * interval);
  const stamps = stamped(set, time, random);
  const end = set.integrates ? stride - 1 : 0;
  const supplied = supply && formed(form, sampled(set, supply)).value;
  const signal = Float64Array.from(kept, (row) => quantised[row]!);
  return {
    sweep: {
      time: stamps,
      signal,
      ...(supplied && {
        supply: Float64Array.from(kept, (row) =>
          round(supplied[row]! * gain + noise * random.normal()),
        ),
      }),
    },
    stamp: time,
    first: Int32Array.from(kept, (row) => rows.from(row) * stride),
    last: Int32Array.from(kept, (row) => rows.to(row) * stride + end),
    departure: Float64Array.from(kept, (row) =>
      Math.abs(rows.value[row]! - (withoutFault ?? rows.value)[row]!),
    ),
    clipped: kept.some((row) => rows.value[row]! > high || rows.value[row]! < low),
    ...visibleOf(set, value, rows, resolution, span),
  };
}

/** The smallest visible departure by the rules of a verdict, V: noise, three steps, 1.5 % of span, ripple. */
function visibleOf(
  set: HabitRecorder,
  value: Float64Array,
  rows: Rows,
  resolution: Volts,
  span: Volts,
): { visible: Volts; noise: Volts } {
  const count = value.length;
  let [square, sine, cosine] = [0, 0, 0];
  for (let row = 0; row < count; row++) {
    const residual = value[row]! - rows.value[row]!;
    const phase = 2 * Math.PI * set.hertz * rows.at(row) * set.interval;
    square += residual * residual;
    sine += residual * Math.sin(phase);
    cosine += residual * Math.cos(phase);
  }
  const ripple = set.hum > 0 ? (2 * Math.hypot(sine, cosine)) / count : 0;
  // Where it is largest: between lines' ends noise is less, and gain noise grows with the reading.
  const levels = rows.value.reduce((sum, volts) => sum + volts * volts, 0) / count;
  const highest = rows.value.reduce((most, volts) => Math.max(most, Math.abs(volts)), 0);
  const uneven =
    (set.form.kind === 'lines' ? 1.22 : 1) *
    (set.colour === 'of the reading' ? highest / Math.sqrt(levels + 1e-9) : 1);
  const spread = uneven * Math.sqrt(Math.max(0, square / count - (ripple * ripple) / 2));
  const noise = Math.hypot(spread, resolution / Math.sqrt(12));
  return {
    visible: Math.max(deviations(count) * noise, 3 * resolution, 0.015 * span, 2.5 * ripple),
    noise,
  };
}

/** How many standard deviations noise of so many samples stays within but for half a percent of recordings. */
function deviations(samples: number): Fraction {
  const tail = 0.005 / (2 * samples);
  let k = 4;
  // The normal tail by its asymptotic series, good to 1e-3 from 3 on.
  for (let i = 0; i < 12; i++) {
    const density = Math.exp((-k * k) / 2) / Math.sqrt(2 * Math.PI);
    const now = (density / k) * (1 - 1 / k ** 2 + 3 / k ** 4);
    k += Math.log(now / tail) / k;
  }
  return k;
}
