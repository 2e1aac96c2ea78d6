import type { Seconds, Volts } from '@truesweep/core';
import { liftedLevel, outputTable } from '../simulator/outputTable.js';
import type { Fault } from '../simulator/plan.js';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Hookup } from './drawHookup.js';

export const faultNames = [
  'worn spot',
  'worn spot near closed',
  'dirty spot',
  'loose signal lead',
  'loose feed lead',
  'interference',
  'cracked track',
  'slipped rotor',
  'dead spot',
  'rough patch',
] as const;

export type FaultName = (typeof faultNames)[number];

export interface FaultPlace {
  readonly hookup: Hookup;
  /** The smallest visible departure, V, and the span, V. */
  readonly visible: Volts;
  readonly span: Volts;
  readonly duration: Seconds;
}

/** One fault, from half of what can be seen up to gross. */
export function drawFault(name: FaultName, place: FaultPlace, random: RandomStream): Fault {
  const { visible, span, duration } = place;
  const depth = Math.min(
    0.4 * span,
    visible * (random.chance(0.4) ? random.between(0.5, 2) : random.logBetween(2, 20)),
  );
  const either = random.chance(0.5) ? 1 : -1;
  switch (name) {
    case 'worn spot':
    case 'worn spot near closed': {
      const width = random.between(0.006, 0.05);
      const from = name === 'worn spot' ? random.between(0.05, 0.9) : random.between(0.01, 0.12);
      const chatter = {
        open: random.logBetween(2e-4, 8e-3),
        closed: random.logBetween(5e-5, 2e-3),
      };
      const chance = random.pick([1, 1, 0.8, 0.6]);
      return { kind: 'worn-spot', from, to: from + width, ohms: 'lifted', chatter, chance };
    }
    case 'dirty spot': {
      const from = random.between(0.03, 0.9);
      const to = from + random.between(0.006, 0.05);
      const ohms = dirtFor(depth, from, place.hookup);
      const chatter = {
        open: random.logBetween(1e-3, 2e-2),
        closed: random.logBetween(5e-5, 1e-3),
      };
      return {
        kind: 'worn-spot',
        from,
        to,
        ohms,
        chance: 1,
        ...(random.chance(0.5) && { chatter }),
      };
    }
    case 'loose signal lead':
    case 'loose feed lead': {
      const lead =
        name === 'loose signal lead' ? 'signal' : random.pick(['supply', 'ground'] as const);
      const bursts = times(random.chance(0.1) ? 1 : random.whole(2, 8), duration, random).map(
        (time) => ({
          time,
          seconds: random.logBetween(0.004, 0.08),
          chatter: { open: random.logBetween(3e-4, 1e-2), closed: random.logBetween(5e-5, 2e-3) },
        }),
      );
      return { kind: 'loose-connection', lead, bursts };
    }
    case 'interference': {
      const bursts = times(
        random.chance(0.15) ? random.whole(1, 2) : random.whole(3, 9),
        duration,
        random,
      ).map((time) => ({
        time,
        volts: (random.chance(0.5) ? 1 : -1) * depth * random.between(0.7, 1.3),
        hertz: random.chance(0.5) ? 0 : random.logBetween(80, 1500),
        decay: random.logBetween(4e-4, 6e-3),
      }));
      return { kind: 'interference', bursts };
    }
    case 'cracked track': {
      const { closedPosition = 0, openPosition = 1 } = place.hookup.actual.sensor;
      const shift = (either * depth * Math.abs(openPosition - closedPosition)) / span;
      return { kind: 'cracked', travel: random.between(0.15, 0.85), shift };
    }
    case 'slipped rotor':
      return {
        kind: 'slipped',
        time: random.between(0.1, 0.9) * duration,
        shift: (either * depth) / span,
      };
    case 'dead spot': {
      const from = random.between(0.05, 0.8);
      return { kind: 'dead-spot', from, to: Math.min(0.97, from + depth / span) };
    }
    case 'rough patch': {
      const from = random.between(0.03, 0.7);
      const scatter = Math.min(0.08 * span, depth / 2.5);
      const share = random.uniform();
      return {
        kind: 'rough',
        from,
        to: from + random.between(0.05, 0.25),
        fixed: scatter * Math.sqrt(share),
        fresh: scatter * Math.sqrt(1 - share),
        grain: random.logBetween(8e-4, 4e-3),
      };
    }
  }
}

/** Moments in rising order, none in the first or last tenth of a second. */
function times(count: number, duration: Seconds, random: RandomStream): readonly Seconds[] {
  return Array.from({ length: count }, () => random.between(0.1, duration - 0.1)).sort(
    (a, b) => a - b,
  );
}

/** The dirt that moves the reading at a travel by a depth; `lifted` where none moves it so far. */
function dirtFor(depth: Volts, travel: number, { actual }: Hookup): number | 'lifted' {
  const { closedPosition = 0, openPosition = 1, track } = actual.sensor;
  const { pullDown = Number.POSITIVE_INFINITY, pullUp } = actual.load;
  const position = closedPosition + travel * (openPosition - closedPosition);
  const source = track * position * (1 - position);
  const load = 1 / (1 / pullDown + (pullUp ? 1 / pullUp.ohms : 0));
  const most = Math.abs(outputTable(actual)(position) - liftedLevel(actual));
  return depth >= 0.95 * most ? 'lifted' : ((load + source) * depth) / (most - depth);
}
