import type { Finding, Volts } from '@truesweep/core';
import { divided, type Legs, noLegs } from '../divider.js';
import type { RandomStream } from '../simulator/randomStream.js';
import { type Bench, bisected, contactFor, positionOf, restLevel } from './bench.js';

/** A recording in the making, on the grid of the motion. */
export interface Scene {
  readonly bench: Bench;
  readonly step: number;
  readonly wiper: Float64Array;
  readonly sound: Float64Array;
  /** Starts as the sound one; a fault changes it. */
  readonly volts: Float64Array;
  readonly visible: Volts;
  readonly random: RandomStream;
}

/** What a fault did from one place of the grid to another. */
export interface Mark {
  readonly kinds: readonly Finding['kind'][];
  readonly from: number;
  readonly to: number;
  /** Of a lasting change: how far the output jumped. */
  readonly jump?: Volts;
}

export type Addition = (scene: Scene) => readonly Mark[];

/** From 0.7 to 40 times the visible departure. */
const depthOf = ({ visible, random }: Scene): Volts => visible * random.logBetween(0.7, 40);

/** Resistance in some leg over a stretch; what hangs on the wiper's lead takes its time when the contact opens. */
function interrupt(scene: Scene, from: number, to: number, legsAt: (i: number) => Legs): void {
  const { bench, wiper, volts, step } = scene;
  const load = 1 / (1 / bench.actual.pullDown + 1 / bench.actual.pullUp);
  let held = volts[Math.max(0, from - 1)]!;
  for (let i = Math.max(0, from); i <= to && i < volts.length; i++) {
    const legs = legsAt(i);
    const target = divided(bench.actual, positionOf(bench, wiper[i]!), legs);
    const time = (bench.restTime * legs.contact) / (legs.contact + load);
    held = time < step / 5 ? target : target + (held - target) * Math.exp(-step / time);
    volts[i] = held;
  }
}

/** Stretches of the grid in which the wiper is within a stretch of travel. */
function passes(wiper: Float64Array, low: number, high: number): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let from = -1;
  for (let i = 0; i <= wiper.length; i++) {
    const x = wiper[i];
    const within = x !== undefined && x >= low && x <= high;
    if (within && from < 0) from = i;
    if (!within && from >= 0) {
      found.push({ from, to: i - 1 });
      from = -1;
    }
  }
  return found;
}

/** Where tracks wear: mostly just above closed. */
const spotAt = (random: RandomStream, width: number): number =>
  width / 2 + (random.chance(0.55) ? random.between(0.03, 0.2) : random.between(0.2, 0.92));

/** Film or lift that takes the output so far toward the load's level at a travel. */
function filmFor({ bench }: Scene, travel: number, depth: Volts): number {
  const position = positionOf(bench, travel);
  const sound = divided(bench.actual, position, noLegs);
  const rest = restLevel(bench.actual);
  const most = Math.abs(rest - sound);
  if (depth >= 0.97 * most) return 1e12;
  return contactFor(bench.actual, position, sound + Math.sign(rest - sound) * depth);
}

/** One place that lifts the contact on most passes; chatter inside it. */
export const wornSpot: Addition = (scene) =>
  filmAt(scene, scene.random.logBetween(0.002, 0.03), scene.random.between(0.6, 1), 0.3);

/** Some places with a film that now and then is thinner. */
export const dirt: Addition = (scene) => {
  const { random } = scene;
  const places = random.whole(1, 3);
  return Array.from({ length: places }, () =>
    filmAt(scene, random.logBetween(0.005, 0.04), random.between(0.4, 0.9), 1),
  ).flat();
};

function filmAt(scene: Scene, width: number, chance: number, spread: number): readonly Mark[] {
  const { random, wiper } = scene;
  const centre = spotAt(random, width);
  const contact = filmFor(scene, centre, depthOf(scene));
  const grain = width / random.whole(2, 8);
  return passes(wiper, centre - width / 2, centre + width / 2)
    .filter(() => random.chance(chance))
    .map(({ from, to }) => {
      const ofPass = contact * Math.exp(spread * random.between(-1, 0.5));
      const cells = Array.from({ length: 10 }, () => Math.exp(spread * random.between(-0.6, 0.2)));
      interrupt(scene, from, to, (i) => ({
        ...noLegs,
        contact: ofPass * cells[Math.floor((wiper[i]! - centre + width) / grain) % 10]!,
      }));
      const isLong = (to - from) * scene.step > 0.15;
      const kinds: Finding['kind'][] = ['dropout', 'spike'];
      if (isLong) kinds.push('step');
      if (isLong || width > 0.015) kinds.push('rough');
      return { kinds, from, to };
    });
}

/** The output stays while the shaft moves on, then catches up. */
export const deadSpot: Addition = (scene) => {
  const { random, wiper, volts, sound, bench, visible } = scene;
  const width = Math.min(0.06, Math.max(0.005, (visible / bench.span) * random.logBetween(0.7, 6)));
  const low = random.between(0.04, 0.88);
  const chance = random.between(0.75, 1);
  return passes(wiper, low, low + width)
    .filter(({ from }) => from > 0 && random.chance(chance))
    .map(({ from, to }) => {
      const catchUp = Math.round(random.between(0, 1.5e-3) / scene.step);
      for (let i = from; i <= to; i++) volts[i] = sound[from - 1]!;
      const end = Math.min(volts.length - 1, to + catchUp);
      for (let i = to + 1; i <= end; i++)
        volts[i] = sound[i]! + (volts[to]! - sound[to]!) * (1 - (i - to) / (catchUp + 1));
      return { kinds: ['dead-spot', 'step'], from, to: end };
    });
};

/** A resistance across the track at one place: the output jumps there and lies on other lines on both sides. */
const cracked =
  (isOpen: boolean): Addition =>
  (scene) => {
    const { random, wiper, sound, volts, bench } = scene;
    const at = random.between(0.08, 0.92);
    const legs = (x: number, ohms: number): Legs => {
      const isAbove = positionOf(bench, x) > positionOf(bench, at);
      return isAbove ? { ...noLegs, below: ohms } : { ...noLegs, above: ohms };
    };
    const jumpOf = (ohms: number): Volts => {
      const beside = [at - 0.01, at + 0.01].map(
        (x) =>
          divided(bench.actual, positionOf(bench, x), legs(x, ohms)) -
          divided(bench.actual, positionOf(bench, x), noLegs),
      );
      return Math.abs(beside[1]! - beside[0]!);
    };
    const wanted = depthOf(scene);
    const ohms = isOpen ? 1e12 : bisected(Math.log(0.1), Math.log(1e6), (r) => jumpOf(r) < wanted);
    const jump = jumpOf(ohms);
    for (let i = 0; i < wiper.length; i++)
      volts[i] = divided(bench.actual, positionOf(bench, wiper[i]!), legs(wiper[i]!, ohms));
    const marks: Mark[] = [];
    for (let i = 1; i < sound.length; i++)
      if (wiper[i]! > at !== wiper[i - 1]! > at)
        marks.push({ kinds: ['step', 'dropout', 'spike'], from: i - 1, to: i, jump });
    return marks;
  };
export const crack = cracked(false);
export const openCrack = cracked(true);

/** The rotor slips on the shaft once, while it moves or as it lands. */
export const slippedRotor: Addition = (scene) => {
  const { random, wiper, volts, bench } = scene;
  const shift = Math.min(0.25, depthOf(scene) / bench.span) * (random.chance(0.5) ? 1 : -1);
  const earliest = wiper.length * random.between(0.25, 0.6);
  let at = Math.floor(earliest);
  while (at < wiper.length - 2 && Math.abs(wiper[at + 1]! - wiper[at]!) / scene.step < 0.05) at++;
  const moved = (i: number): Volts =>
    divided(
      bench.actual,
      positionOf(bench, Math.min(1.2, Math.max(-0.2, wiper[i]! + shift))),
      noLegs,
    );
  for (let i = at; i < wiper.length; i++) volts[i] = moved(i);
  const jump = Math.abs(volts[at]! - scene.sound[at]!);
  return [{ kinds: ['step', 'dead-spot'], from: at - 1, to: at, jump }];
};

/** Scatter with travel over a stretch, partly the same on every pass. */
export const roughPatch: Addition = (scene) => {
  const { random, wiper, volts, bench } = scene;
  const width = random.between(0.02, 0.1);
  const low = random.chance(0.5) ? random.between(0.03, 0.15) : random.between(0.15, 0.88);
  const size = Math.min(0.15 * bench.span, depthOf(scene) / 2.5);
  const grain = random.logBetween(4e-4, 3e-3);
  const toward = Math.sign(
    restLevel(bench.actual) - divided(bench.actual, positionOf(bench, low), noLegs),
  );
  const isLifting = random.chance(0.5);
  const own = Array.from({ length: 512 }, () => random.normal());
  return passes(wiper, low, low + width).map(({ from, to }) => {
    const ofPass = random.whole(0, 511);
    for (let i = from; i <= to; i++) {
      const at = wiper[i]! / grain;
      const cell = Math.floor(at);
      const mixed = (n: number): number => 0.7 * own[n & 511]! + 0.7 * own[(n * 7 + ofPass) & 511]!;
      const value = mixed(cell) + (at - cell) * (mixed(cell + 1) - mixed(cell));
      volts[i]! += size * (isLifting ? Math.abs(value) * toward : value);
    }
    return { kinds: ['rough', 'dropout', 'spike'], from, to };
  });
};

/** A lead that opens at random, also at rest. */
export const looseLead =
  (leg: keyof Legs): Addition =>
  (scene) => {
    const { random, bench, wiper, step } = scene;
    const position = positionOf(bench, 0.5);
    const depth = depthOf(scene);
    const departure = (ohms: number): Volts =>
      Math.abs(
        divided(bench.actual, position, { ...noLegs, [leg]: ohms }) -
          divided(bench.actual, position, noLegs),
      );
    const ohms = bisected(Math.log(0.1), Math.log(1e12), (r) => departure(r) < depth);
    const marks: Mark[] = [];
    const wanted = random.whole(5, 25);
    const longest = random.logBetween(2e-3, 0.15);
    let at = random.exponential(wiper.length / wanted);
    while (at < wiper.length - 10) {
      const from = Math.floor(at);
      const to = Math.min(
        wiper.length - 2,
        from + Math.ceil(random.logBetween(3e-4, longest) / step),
      );
      const ofThis = ohms * Math.exp(random.between(-0.4, 0.4));
      const chatter = random.chance(0.4)
        ? Math.max(1, Math.round(random.between(5e-4, 4e-3) / step))
        : 0;
      interrupt(scene, from, to, (i) =>
        chatter > 0 && Math.floor((i - from) / chatter) % 2 === 1
          ? noLegs
          : { ...noLegs, [leg]: ofThis },
      );
      const isLong = (to - from) * step > 0.05;
      marks.push({
        kinds: isLong ? ['dropout', 'spike', 'step', 'rough'] : ['dropout', 'spike', 'rough'],
        from,
        to,
      });
      at = to + 10 + random.exponential(wiper.length / wanted);
    }
    return marks;
  };

/** Pulses and bursts both ways, whatever the throttle does. */
export const interference: Addition = (scene) => {
  const { random, volts, step } = scene;
  const size = depthOf(scene);
  const shape = random.pick(['pulse', 'ring', 'burst'] as const);
  const events = random.whole(8, 40);
  const decay = Math.max(2 * step, random.logBetween(1e-4, 3e-3));
  const hertz = Math.min(0.1 / step, random.logBetween(200, 4000));
  const marks: Mark[] = [];
  let sign = 1;
  const pulse = (from: number): number => {
    sign = random.chance(0.7) ? -sign : sign;
    const height = sign * size * random.between(0.5, 1);
    const length = Math.ceil((6 * decay) / step);
    for (let k = 0; k < length && from + k < volts.length; k++) {
      const time = k * step;
      const wave = shape === 'ring' ? Math.cos(2 * Math.PI * hertz * time) : 1;
      volts[from + k]! += height * Math.exp(-time / decay) * wave;
    }
    return from + length;
  };
  for (let i = 0; i < events; i++) {
    const from = Math.floor(random.uniform() * (volts.length - 1));
    let to = from;
    const pulses = shape === 'burst' ? random.whole(3, 12) : 1;
    for (let n = 0; n < pulses; n++)
      to = pulse(from + Math.floor((n * 0.012 * random.between(0.9, 1.1)) / step));
    marks.push({ kinds: ['spike', 'dropout', 'rough'], from, to: Math.min(volts.length - 1, to) });
  }
  return marks.sort((a, b) => a.from - b.from);
};
