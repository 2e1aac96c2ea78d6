import type { Cause, Finding, Volts } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Bench } from './bench.js';
import type { Strokes } from './strokes.js';

export const faultNames = [
  'chattering spot',
  'bump of dirt',
  'loose signal lead',
  'loose feed lead',
  'pulses',
  'ringing',
  'crack',
  'slip',
  'dead spot',
  'rough patch',
  'closed end off',
] as const;
export type FaultName = (typeof faultNames)[number];

export const causes: Readonly<Record<FaultName, Cause>> = {
  'chattering spot': 'track',
  'bump of dirt': 'track',
  'loose signal lead': 'connection',
  'loose feed lead': 'connection',
  pulses: 'interference',
  ringing: 'interference',
  crack: 'track',
  slip: 'track',
  'dead spot': 'track',
  'rough patch': 'track',
  'closed end off': 'ends',
};

/** A passage over a fault, by places on the fine grid. */
export interface Passage {
  readonly kinds: readonly Finding['kind'][];
  readonly from: number;
  readonly to: number;
}

/** Puts a fault of some depth into the sensor's voltage, in place; returns where it shows. */
export function addFault(
  name: FaultName,
  volts: Float64Array,
  strokes: Strokes,
  bench: Bench,
  depth: Volts,
  random: RandomStream,
): readonly Passage[] {
  const { travel, step } = strokes;
  const { span, lifted, output, expected } = bench;
  const either = random.chance(0.5) ? 1 : -1;
  const sound = volts.slice();
  switch (name) {
    case 'chattering spot': {
      const at = wornPlace(random);
      const back = Math.exp(-step / random.logBetween(7e-5, 1e-3));
      return crossings(travel, at, at + random.between(0.004, 0.03)).map(([from, to]) => {
        let now = volts[from]!;
        let open = true;
        for (let i = from; i <= to; i++) {
          if (random.chance(step / 4e-3)) open = !open;
          const aim = open ? lifted : sound[i]!;
          now = aim + (now - aim) * back;
          volts[i] = now;
        }
        return { kinds: ['dropout'], from, to };
      });
    }
    case 'bump of dirt': {
      const at = wornPlace(random);
      return crossings(travel, at, at + random.between(0.004, 0.03)).map(([from, to]) => {
        for (let i = from; i <= to; i++) {
          const way = lifted - sound[i]!;
          const bump = Math.sin((Math.PI * (i - from)) / Math.max(1, to - from));
          volts[i]! += Math.sign(way) * Math.min(depth, Math.abs(way)) * bump;
        }
        return { kinds: ['dropout'], from, to };
      });
    }
    case 'loose signal lead':
    case 'loose feed lead': {
      const broken =
        name === 'loose feed lead'
          ? bench.withoutLead(random.pick(['supply', 'ground'] as const))
          : () => lifted;
      return moments(random.whole(3, 7), volts, step, random).map((from) => {
        const to = from + Math.round(random.logBetween(0.004, 0.06) / step);
        for (let i = from; i < to && i < volts.length; i++) volts[i] = broken(travel[i]!);
        return { kinds: name === 'loose feed lead' ? ['dropout', 'spike'] : ['dropout'], from, to };
      });
    }
    case 'pulses':
    case 'ringing':
      return moments(random.whole(4, 10), volts, step, random).map((from) => {
        const decay = random.logBetween(1e-3, 6e-3);
        const omega = name === 'ringing' ? 2 * Math.PI * random.logBetween(100, 800) : 0;
        const sign = random.chance(0.5) ? 1 : -1;
        const to = from + Math.round((4 * decay) / step);
        for (let i = from; i < to && i < volts.length; i++) {
          const since = (i - from) * step;
          volts[i]! += sign * depth * Math.exp(-since / decay) * Math.cos(omega * since);
        }
        return { kinds: ['spike', 'dropout'], from, to };
      });
    case 'crack': {
      const at = random.between(0.2, 0.8);
      for (let i = 0; i < volts.length; i++) if (travel[i]! > at) volts[i]! += either * depth;
      return crossings(travel, at, Infinity)
        .flatMap(([from, to]) => [from, to + 1])
        .filter((edge) => edge > 0 && edge < volts.length)
        .map((edge) => ({ kinds: ['step'], from: edge - 1, to: edge }));
    }
    case 'slip': {
      const at = Math.floor(random.between(0.2, 0.8) * volts.length);
      for (let i = at; i < volts.length; i++) volts[i]! += either * depth;
      return [{ kinds: ['step'], from: at - 1, to: at }];
    }
    case 'dead spot': {
      const low = random.between(0.1, 0.7);
      const high = low + depth / span;
      return crossings(travel, low, high).map(([from, to]) => {
        const held = from > 0 && travel[from - 1]! < low ? low : high;
        volts.fill(output(held), from, to + 1);
        return { kinds: ['dead-spot'], from, to };
      });
    }
    case 'rough patch': {
      const low = random.between(0.1, 0.7);
      const width = random.between(0.06, 0.2);
      const scatter = 1.3 * Math.min(depth / 2, 0.06 * span);
      const keep = Math.exp(-step / 2e-3);
      return crossings(travel, low, low + width).map(([from, to]) => {
        let noise = 0;
        for (let i = from; i <= to; i++) {
          noise = keep * noise + Math.sqrt(1 - keep * keep) * random.normal();
          const swell = Math.sin((Math.PI * (travel[i]! - low)) / width);
          volts[i]! += scatter * noise * Math.sqrt(Math.max(0, swell));
        }
        return { kinds: ['rough'], from, to };
      });
    }
    case 'closed end off': {
      const { low, high } = expected.windows.closed;
      const away = (either > 0 ? high : low) + either * 0.06 * span - sound[0]!;
      for (let i = 0; i < volts.length; i++) volts[i]! += away * (1 - travel[i]!);
      return [];
    }
  }
}

/** Half of the worn places lie just above closed. */
function wornPlace(random: RandomStream): number {
  return random.chance(0.5) ? random.between(0.05, 0.2) : random.between(0.2, 0.85);
}

/** Stretches of the grid in which the travel lies between two places. */
function crossings(
  travel: Float64Array,
  low: number,
  high: number,
): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  let from = -1;
  for (let i = 0; i <= travel.length; i++) {
    const inside = i < travel.length && travel[i]! >= low && travel[i]! <= high;
    if (inside && from < 0) from = i;
    if (inside || from < 0) continue;
    found.push([from, i - 1]);
    from = -1;
  }
  return found;
}

/** Random places on the grid, none in the first or last 0.3 s. */
function moments(
  count: number,
  volts: Float64Array,
  step: number,
  random: RandomStream,
): readonly number[] {
  const edge = 0.3 / step;
  return Array.from({ length: count }, () => Math.floor(random.between(edge, volts.length - edge)));
}
