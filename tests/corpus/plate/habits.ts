import type { Seconds } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Deed, Manner } from './deed.js';

export const habits = [
  'slow',
  'quick',
  'ten quick',
  'snap',
  'half released',
  'short openings',
  'slid through fingers',
  'caught above closed',
  'thrown',
  'slipped and caught',
  'half dwell',
  'reversal',
  'landed by hand',
  'motor',
  'screwdriver',
  'cable',
  'tapped',
] as const;
export type Habit = (typeof habits)[number];

/** Those that end by the spring: only there nobody stopped a return short. */
export const springHabits = [
  'snap',
  'half released',
  'short openings',
  'slid through fingers',
  'thrown',
] as const satisfies readonly Habit[];

/** Pressed onto a stop from so far beyond it. */
const beyond = 0.04;

/** Deeds for about so many seconds: whole strokes first, then what the habit is known for with whole strokes between. */
export function drawDeeds(
  habit: Habit,
  stroke: Seconds,
  seconds: Seconds,
  random: RandomStream,
): readonly Deed[] {
  const rest = (): Seconds => random.between(0.15, 0.5);
  const deeds: Deed[] = [{ do: 'release', seconds: random.between(0.1, 0.5) }];
  let planned = 0.4;
  const add = (...more: readonly Deed[]): void => {
    for (const deed of more) {
      deeds.push(deed);
      planned += deed.do === 'tap' ? deed.times * deed.every : deed.seconds + 0.1;
    }
  };
  const manner: Manner =
    habit === 'motor'
      ? 'even'
      : habit === 'screwdriver'
        ? 'steps'
        : random.pick(['smooth', 'plain'] as const);
  const turn = (to: number, share = 1): Deed => ({
    do: 'turn',
    to,
    seconds: Math.max(0.15, stroke * share * random.between(0.85, 1.2)),
    manner,
    ...(habit === 'cable' && { byCable: true }),
  });
  const open = (): void => add(turn(1 + beyond), { do: 'hold', seconds: rest() });
  const letGo = (): void => add({ do: 'release', seconds: rest() });
  const whole = (snapped: boolean): void => {
    open();
    if (!snapped) add(turn(-beyond), { do: 'hold', seconds: 0.1 });
    letGo();
  };
  const own: Record<Habit, () => void> = {
    slow: () => whole(false),
    quick: () => whole(random.chance(0.2)),
    'ten quick': () => {
      for (let i = 0; i < 10; i++) {
        const seconds = random.between(0.2, 0.45);
        const quick = (to: number): Deed => ({ do: 'turn', to, seconds, manner: 'smooth' });
        add(quick(1 + beyond), quick(-beyond));
      }
      letGo();
    },
    snap: () => whole(true),
    'half released': () => {
      add(turn(random.between(0.35, 0.75), 0.6), {
        do: 'hold',
        seconds: random.between(0.05, 0.5),
      });
      letGo();
    },
    'short openings': () => {
      for (let i = random.whole(2, 5); i > 0; i--) {
        add(turn(random.between(0.12, 0.35), 0.3), {
          do: 'hold',
          seconds: random.between(0.06, 0.3),
        });
        letGo();
      }
    },
    'slid through fingers': () => {
      open();
      add({
        do: 'release',
        brake: random.between(0.3, 1.1),
        fade: random.logBetween(0.03, 0.25),
        seconds: rest(),
      });
    },
    'caught above closed': () => {
      add(turn(random.chance(0.5) ? 1 + beyond : random.between(0.4, 0.9)), {
        do: 'hold',
        seconds: 0.2,
      });
      add({ do: 'catch', below: random.between(0.06, 0.3), seconds: random.between(0.15, 0.6) });
      letGo();
    },
    thrown: () =>
      add({
        do: 'flick',
        reach: random.between(0.4, 1.8),
        push: random.logBetween(0.006, 0.03),
        seconds: rest(),
      }),
    'slipped and caught': () => {
      add(turn(random.between(0.4, 0.8), 0.7));
      add({ do: 'catch', below: random.between(0.3, 0.6), seconds: random.between(0.1, 0.3) });
      add(turn(1 + beyond, 0.6), { do: 'hold', seconds: rest() });
      if (random.chance(0.5)) add(turn(-beyond), { do: 'hold', seconds: 0.1 });
      letGo();
    },
    'half dwell': () => {
      add(turn(random.between(0.3, 0.7), 0.5), { do: 'hold', seconds: random.between(0.5, 3) });
      add(turn(random.chance(0.5) ? 1 + beyond : -beyond, 0.6), { do: 'hold', seconds: 0.2 });
      if (random.chance(0.5)) add(turn(-beyond, 0.8), { do: 'hold', seconds: 0.1 });
      letGo();
    },
    reversal: () => {
      const [high, low] = [random.between(0.5, 0.9), random.between(0.15, 0.4)];
      add(turn(high, 0.7), turn(low, random.between(0.2, 0.6)), turn(1 + beyond, 0.7));
      add({ do: 'hold', seconds: 0.2 }, turn(low, 0.7), turn(high, 0.4), turn(-beyond, 0.8));
      letGo();
    },
    'landed by hand': () => {
      open();
      const seconds = random.between(0.16, 0.35);
      add({ do: 'turn', to: random.between(-0.4, -0.1), seconds, manner: 'smooth' });
      letGo();
    },
    motor: () => whole(false),
    screwdriver: () => whole(random.chance(0.2)),
    cable: () => whole(random.chance(0.3)),
    tapped: () => {
      whole(random.chance(0.5));
      add({
        do: 'tap',
        hop: random.logBetween(0.002, 0.013),
        times: random.whole(2, 8),
        every: random.between(0.08, 0.3),
      });
    },
  };
  whole(habit === 'snap');
  const never = habit === 'short openings' || habit === 'half released';
  const [at, manyOwn] = [deeds.length, random.chance(0.8)];
  while (planned < seconds) {
    if (manyOwn || random.chance(0.4)) own[habit]();
    if (!never && random.chance(0.15) && planned < seconds) whole(random.chance(0.5));
  }
  if (deeds.length === at) own[habit]();
  return deeds;
}
