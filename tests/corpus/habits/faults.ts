import type { Cause, Connection, Finding, Seconds, Volts } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Bench } from './bench.js';

export const faultNames = [
  'worn',
  'worn',
  'worn',
  'dirt',
  'dirt',
  'snap dropout',
  'dead spot',
  'dead spot',
  'crack',
  'crack',
  'open crack',
  'slipped',
  'rough',
  'rough',
  'loose signal',
  'loose signal',
  'loose supply',
  'loose ground',
  'ignition',
  'ignition',
  'radio',
  'relay',
  'closed end',
  'open end',
  'sticky',
  'sticky',
  'no output',
  'exchanged',
  'mirrored exchange',
  'wrong terminal',
  'sag',
  'clipped',
] as const;
export type FaultName = (typeof faultNames)[number];

export const families: Readonly<
  Record<
    FaultName,
    'track' | 'connection' | 'interference' | 'hook-up' | 'ends' | 'return' | 'supply' | 'recorder'
  >
> = {
  worn: 'track',
  dirt: 'track',
  'snap dropout': 'track',
  'dead spot': 'track',
  crack: 'track',
  'open crack': 'hook-up',
  slipped: 'track',
  rough: 'track',
  'loose signal': 'connection',
  'loose supply': 'connection',
  'loose ground': 'connection',
  ignition: 'interference',
  radio: 'interference',
  relay: 'interference',
  'closed end': 'ends',
  'open end': 'ends',
  sticky: 'return',
  'no output': 'hook-up',
  exchanged: 'hook-up',
  'mirrored exchange': 'hook-up',
  'wrong terminal': 'hook-up',
  sag: 'supply',
  clipped: 'recorder',
};

/** The causes of a fault that left enough to see. */
export const trueCauses: Readonly<Record<(typeof families)[FaultName], readonly Cause[]>> = {
  track: ['track'],
  connection: ['connection'],
  interference: ['interference', 'recording'],
  'hook-up': ['wiring', 'connection'],
  ends: ['ends'],
  return: ['closed-rest'],
  supply: ['connection', 'interference', 'recording', 'wiring', 'none'],
  recorder: ['recording'],
};

/** A passage over a fault, by places on the grid. */
export interface Passage {
  readonly kinds: readonly Finding['kind'][];
  readonly from: number;
  readonly to: number;
}

/** The world on its grid, before it is recorded. */
export interface World {
  readonly bench: Bench;
  /** Share of its way that the wiper has gone, play and bends included. */
  readonly share: Float64Array;
  readonly sound: Float64Array;
  readonly step: Seconds;
  /** Falls by the spring and rebounds. */
  readonly isFast: (place: number) => boolean;
  readonly isResting: (place: number) => boolean;
}

/** What the faulty sensor gave: its voltage, and where it was crossed. */
export interface Faulty {
  readonly volts: Float64Array;
  readonly passages: readonly Passage[];
  /** The supply's share that was left, where it sagged. */
  readonly supply?: Float64Array;
}

/** Plays a fault of a depth, V, into the world. */
export function playFault(
  name: FaultName,
  world: World,
  depth: Volts,
  random: RandomStream,
): Faulty {
  switch (name) {
    case 'worn':
      return dropouts(world, depth, wornPlace(random), 'chatter', random);
    case 'dirt':
      return dropouts(world, depth, wornPlace(random), 'hump', random);
    case 'snap dropout':
      return dropouts(world, depth, random.between(0.2, 0.85), 'in falls', random);
    case 'dead spot':
      return deadSpot(world, depth, random);
    case 'crack':
      return crack(world, depth, random);
    case 'slipped':
      return slipped(world, depth, random);
    case 'rough':
      return rough(world, depth, random);
    case 'loose signal':
      return loose(world, () => world.bench.lifted, ['dropout'], random);
    case 'loose supply':
      return loose(
        world,
        overPlace(world, world.bench.without('supply')),
        ['dropout', 'spike'],
        random,
      );
    case 'loose ground':
      return loose(
        world,
        overPlace(world, world.bench.without('ground')),
        ['spike', 'dropout'],
        random,
      );
    case 'ignition':
      return bursts(world, depth, random.between(12, 70), 0, random);
    case 'radio':
      return bursts(world, depth, 217, random.between(0.1, 0.8), random);
    case 'relay':
      return bursts(world, depth, random.between(0.2, 1), 0, random);
    case 'sag':
      return sag(world, random);
    case 'open crack':
      return elsewhere(world, world.bench.brokenAt(world.bench.place(random.between(0.15, 0.85))));
    case 'no output': {
      const { bench } = world;
      const level = random.pick([bench.lifted, bench.without('supply'), bench.without('ground')]);
      return elsewhere(world, typeof level === 'number' ? () => level : level);
    }
    case 'exchanged':
    case 'mirrored exchange':
      return elsewhere(
        world,
        world.bench.connected({ supply: 'bottom', ground: 'top', signal: 'wiper' }),
      );
    case 'wrong terminal': {
      const ways: readonly Connection[] = [
        { supply: 'top', ground: 'wiper', signal: 'bottom' },
        { supply: 'wiper', ground: 'bottom', signal: 'top' },
        { supply: 'bottom', ground: 'wiper', signal: 'top' },
        { supply: 'wiper', ground: 'top', signal: 'bottom' },
      ];
      return elsewhere(world, world.bench.connected(random.pick(ways)));
    }
    default:
      return { volts: world.sound, passages: [] };
  }
}

/** Wear is usual just above closed throttle. */
function wornPlace(random: RandomStream): number {
  return random.chance(0.6) ? random.between(0.06, 0.25) : random.between(0.25, 0.9);
}

function overPlace(
  { bench, share }: World,
  output: (position: number) => Volts,
): (i: number) => Volts {
  return (i) => output(bench.place(share[i]!));
}

function elsewhere(world: World, output: (position: number) => Volts): Faulty {
  const at = overPlace(world, output);
  return { volts: world.share.map((_, i) => at(i)), passages: [] };
}

/** Every stretch of the grid that lies between two shares; one that jumps over them in one step counts. */
function crossings(share: Float64Array, low: number, high: number): [number, number][] {
  const found: [number, number][] = [];
  let begin = -1;
  for (let i = 1; i < share.length; i++) {
    const [a, b] = [share[i - 1]!, share[i]!];
    const isIn = b >= low && b <= high;
    const over = (a < low && b > high) || (a > high && b < low);
    if ((isIn || over) && begin < 0) begin = i;
    if (begin >= 0 && !isIn) {
      found.push([begin, over ? i : i - 1]);
      begin = -1;
    }
  }
  if (begin >= 0) found.push([begin, share.length - 1]);
  return found;
}

/** Toward the level of a lifted wiper, partly or whole, on most passes, growing with them. */
function dropouts(
  world: World,
  depth: Volts,
  at: number,
  manner: 'chatter' | 'hump' | 'in falls',
  random: RandomStream,
): Faulty {
  const { bench, share, sound, step, isFast } = world;
  const volts = sound.slice();
  const passages: Passage[] = [];
  // A grain of dirt lifts the wiper for a moment only, a worn stretch of the track for longer.
  const widths = { chatter: [0.003, 0.04], hump: [8e-4, 0.01], 'in falls': [0.003, 0.1] } as const;
  const [least, most] = widths[manner];
  const width = random.logBetween(least, most);
  const often = random.between(0.6, 1);
  const growing = random.chance(0.3);
  const whole = random.chance(0.25);
  // What hangs on the wiper lets the output sink slowly, a touching contact brings it back at once.
  const keep = Math.exp(-step / random.logBetween(1e-5, 1e-3));
  const toggling = random.logBetween(5e-4, 1e-2);
  for (const [from, to] of crossings(share, at, at + width)) {
    if (manner === 'in falls' && !isFast(from)) continue;
    if (!random.chance(often)) continue;
    const grown = growing ? Math.min(1, 0.3 + 0.15 * passages.length) : random.between(0.7, 1);
    let isOpen = true;
    let now = sound[from]!;
    for (let i = from; i <= to; i++) {
      const away = bench.lifted - sound[i]!;
      const full = whole ? away : Math.sign(away) * Math.min(Math.abs(away), depth * grown);
      const hump = manner === 'hump' ? Math.sin((Math.PI * (i - from + 0.5)) / (to - from + 1)) : 1;
      if (manner === 'chatter' && random.chance(step / toggling)) isOpen = !isOpen;
      const aim = sound[i]! + (isOpen ? full * hump : 0);
      now = isOpen ? aim + (now - aim) * keep : aim;
      volts[i] = now;
    }
    passages.push({ kinds: ['dropout'], from, to });
  }
  return { volts, passages };
}

/** The wiper sticks while the shaft goes on, and jumps: a width that lasts milliseconds in a quick stroke and longer in a slow one. */
function deadSpot(world: World, depth: Volts, random: RandomStream): Faulty {
  const { bench, share, sound } = world;
  const volts = sound.slice();
  const at = random.between(0.1, 0.85);
  const width = Math.min(0.12, depth / bench.span);
  const passages = crossings(share, at, at + width).map(([from, to]): Passage => {
    const held = sound[Math.max(0, from - 1)]!;
    for (let i = from; i <= to; i++) volts[i] = held;
    return { kinds: ['dead-spot', 'step'], from, to: Math.min(share.length - 1, to + 1) };
  });
  return { volts, passages };
}

/** A resistance at one place of the track: the reading jumps there and stays on another line. */
function crack(world: World, depth: Volts, random: RandomStream): Faulty {
  const { bench, share, step } = world;
  const at = random.between(0.15, 0.85);
  const place = bench.place(at);
  const positions = Math.abs(bench.place(1) - bench.place(0)) * (depth / bench.span);
  const added = Math.min(0.5, positions / Math.max(0.1, 1 - positions));
  const volts = share.map((now) => {
    const position = bench.place(now);
    return bench.output((position > place ? position + added : position) / (1 + added));
  });
  return { volts, passages: jumps(crossings(share, at - 1e-9, at + 1e-9), share.length, step) };
}

/** A few milliseconds around each jump. */
function jumps(at: readonly [number, number][], count: number, step: Seconds): Passage[] {
  const around = Math.max(1, Math.round(0.004 / step));
  return at.map(([from, to]) => ({
    kinds: ['step'],
    from: Math.max(0, from - around),
    to: Math.min(count - 1, to + around),
  }));
}

/** From a moment on everything lies elsewhere. */
function slipped(world: World, depth: Volts, random: RandomStream): Faulty {
  const { bench, share, sound, step } = world;
  const moment = Math.floor(share.length * random.between(0.2, 0.8));
  const away = random.pick([-1, 1]) * Math.min(0.3, depth / bench.span);
  const volts = sound.slice();
  for (let i = moment; i < volts.length; i++)
    volts[i] = bench.output(bench.place(share[i]! + away));
  return { volts, passages: jumps([[moment, moment]], share.length, step) };
}

function rough(world: World, depth: Volts, random: RandomStream): Faulty {
  const { bench, share, sound, step } = world;
  const volts = sound.slice();
  const at = random.between(0.05, 0.7);
  const keep = Math.exp(-step / random.logBetween(2e-4, 2e-3));
  const oneSided = random.chance(0.5);
  const kinds = ['rough', 'dropout', 'spike', 'step'] as const;
  const passages = crossings(share, at, at + random.logBetween(0.04, 0.3)).map(
    ([from, to]): Passage => {
      let now = 0;
      for (let i = from; i <= to; i++) {
        now = keep * now + Math.sqrt(1 - keep * keep) * random.normal();
        const away =
          (oneSided ? -Math.abs(now) * Math.sign(sound[i]! - bench.lifted) : now) * (depth / 3);
        volts[i]! += oneSided
          ? Math.sign(away) * Math.min(Math.abs(away), Math.abs(sound[i]! - bench.lifted))
          : away;
      }
      return { kinds, from, to };
    },
  );
  return { volts, passages };
}

/** A lead that lets go at random, also while nothing moves. */
function loose(
  world: World,
  gone: (i: number) => Volts,
  kinds: Passage['kinds'],
  random: RandomStream,
): Faulty {
  const { sound, step, isResting } = world;
  const volts = sound.slice();
  const count = volts.length;
  // Some let go mostly while somebody flexes them at rest.
  const moving = random.chance(0.3) ? 0.3 : 1;
  const rate = random.between(3, 14) / (count * step);
  const length = random.logBetween(1e-3, 0.03);
  const part = random.chance(0.7) ? 1 : random.between(0.1, 0.9);
  const chatters = random.chance(0.5);
  const passages: Passage[] = [];
  for (let i = Math.floor(random.exponential(1 / rate) / step); i < count - 1; ) {
    const to = Math.min(
      count - 1,
      i + Math.max(1, Math.round((length * random.logBetween(0.3, 3)) / step)),
    );
    const letsGo = isResting(i) || random.chance(moving);
    for (let k = i, isOff = true; letsGo && k <= to; k++) {
      if (chatters && random.chance(step / 2e-3)) isOff = !isOff;
      if (isOff) volts[k]! += part * (gone(k) - sound[k]!);
    }
    if (letsGo) passages.push({ kinds, from: i, to });
    i = to + 1 + Math.floor(random.exponential(1 / rate) / step);
  }
  return { volts, passages };
}

/** Ringing pulses of either direction, in trains or bursts. */
function bursts(
  world: World,
  depth: Volts,
  perSecond: number,
  burst: Seconds,
  random: RandomStream,
): Faulty {
  const { sound, step } = world;
  const volts = sound.slice();
  const count = volts.length;
  const total = count * step;
  const ring = random.logBetween(200, 3000);
  const decay = random.logBetween(1e-4, 1e-3);
  const jitter = burst > 0 ? 0 : perSecond > 5 ? 0.02 : 1;
  const from = random.between(0, 0.5) * total;
  let until = burst > 0 ? from + burst : from + random.between(0.3, 0.7) * total;
  const gated = random.chance(0.5);
  const passages: Passage[] = [];
  for (let t = gated || burst > 0 ? from : 0; t < (gated || burst > 0 ? until : total); ) {
    const begin = Math.floor(t / step);
    const reach = Math.max(1, Math.ceil((5 * decay) / step));
    const size = random.pick([-1, 1]) * depth * random.between(0.5, 1);
    for (let i = begin; i <= begin + reach && i < count; i++) {
      const since = i * step - t + 1e-5;
      volts[i]! +=
        size * Math.exp(-Math.max(0, since) / decay) * Math.cos(2 * Math.PI * ring * since);
    }
    if (begin < count)
      passages.push({
        kinds: ['spike', 'dropout', 'rough', 'step'],
        from: begin,
        to: Math.min(count - 1, begin + reach),
      });
    t +=
      jitter === 1 ? random.exponential(1 / perSecond) : (1 + jitter * random.normal()) / perSecond;
    if (burst > 0 && t >= until && t + 0.5 < total && random.chance(0.6)) {
      t += random.between(0.3, 1);
      until = t + burst;
    }
  }
  return { volts, passages };
}

/** The source gives way for a while, a few times. */
function sag(world: World, random: RandomStream): Faulty {
  const { sound, step } = world;
  const left = new Float64Array(sound.length).fill(1);
  const passages: Passage[] = [];
  for (let n = random.whole(1, 5); n > 0; n--) {
    const from = Math.floor(random.uniform() * sound.length);
    const to = Math.min(sound.length - 1, from + Math.ceil(random.logBetween(0.01, 0.4) / step));
    const deep = random.between(0.03, 0.4);
    for (let i = from; i <= to; i++)
      left[i] = 1 - deep * Math.sin((Math.PI * (i - from)) / (to - from + 1)) ** 0.5;
    passages.push({ kinds: ['dropout', 'step', 'spike', 'rough', 'dead-spot'], from, to });
  }
  return { volts: sound.map((volts, i) => volts * left[i]!), passages, supply: left };
}
