import type { Seconds, Stretch, Travel } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/** A stretch of the throttle's movement; `at` gives its travel over the seconds since its start. */
export interface Segment {
  readonly kind: 'rest' | 'held' | 'hand' | 'fall' | 'bounce';
  readonly start: Seconds;
  readonly seconds: Seconds;
  readonly at: (seconds: Seconds) => Travel;
  /** Left out of the recording. */
  readonly unrecorded?: boolean;
  readonly note?: Stretch['kind'];
}

/** Where the throttle came to lie on its closed stop, and which way it came there. */
export interface Landing {
  readonly time: Seconds;
  readonly level: Travel;
  readonly way: 'fall' | 'hand';
}

export interface Motion {
  readonly segments: readonly Segment[];
  readonly landings: readonly Landing[];
  readonly total: Seconds;
  /** Play between lever and shaft, travel. */
  readonly slack: Travel;
  /** Fall from the open to the closed stop, s. */
  readonly fall: Seconds;
}

export const habits = [
  'plain',
  'plain',
  'ten quick',
  'thrown',
  'slid',
  'caught',
  'short',
  'dashpot',
  'hand landing',
  'half open',
  'idle screw',
  'slack',
  'motor',
  'tapped',
  'cut',
  'long open',
  'mixed',
  'mixed',
  'only snaps',
  'one stroke',
  'partial',
] as const;
export type Habit = (typeof habits)[number];

/** What bounds a movement: its length, the highest place it sticks at when it returns, and how far the idle screw lifts its stop. */
export interface MotionBounds {
  readonly most: Seconds;
  readonly sticky: Travel;
  readonly idle: Travel;
}

const minimumJerk = (u: number): number => u * u * u * (10 + u * (6 * u - 15));
const styles = ['smooth', 'smooth', 'steady', 'wavering', 'stick and slip', 'jerky'] as const;
type Style = (typeof styles)[number];

/** Rebounds this low are none, travel. */
const lowest = 0.003;

/** The hand, the spring and the stops: each call adds what the throttle does next. */
function mover({ most, sticky, idle }: MotionBounds, random: RandomStream) {
  const segments: Segment[] = [];
  const landings: Landing[] = [];
  const fall = random.logBetween(0.012, 0.2);
  const rebound = random.logBetween(0.02, 0.3);
  const rising = random.between(0.7, 1);
  const hand = random.pick(styles);
  /** Short recordings are made in a hurry. */
  const pace = Math.min(1, Math.max(0.12, most / 9));
  const tremor = random.logBetween(2e-4, 2.5e-3);
  let time = 0;
  let x = 0;
  let stop = 0;
  let way: Landing['way'] = 'hand';

  const add = (
    kind: Segment['kind'],
    seconds: Seconds,
    at: Segment['at'],
    more: Partial<Segment> = {},
  ): void => {
    segments.push({ kind, start: time, seconds, at, ...more });
    time += seconds;
    x = at(seconds);
  };
  const restSeconds = (): Seconds => Math.max(0.09, random.between(0.15, 1.2) * pace);
  const rest = (seconds = restSeconds(), note?: Stretch['kind']): void => {
    const level = x;
    if (Math.abs(x - stop) < 1e-9 || level < stop + sticky + 0.01)
      landings.push({ time, level, way });
    add('rest', seconds, () => level, note && { note });
  };
  /** At rest, tapped or flexed: the plate shivers, less than shows. */
  const shake = (seconds: Seconds, note: NonNullable<Segment['note']>): void => {
    const level = x;
    const height = random.between(0, 0.004);
    const ring = 2 * Math.PI * random.between(30, 90);
    landings.push({ time, level, way });
    add(
      'rest',
      seconds,
      (t) => level + height * Math.exp(-(t % 0.4) / 0.02) * Math.abs(Math.sin(ring * (t % 0.4))),
      { note },
    );
    x = level;
  };
  /** In the hand, which trembles. */
  const hold = (seconds = restSeconds()): void => {
    const level = x;
    const pulse = 2 * Math.PI * random.between(8, 12);
    const room = Math.min(tremor, level - stop, 1 - level);
    add('held', seconds, (t) => level + room * Math.sin(pulse * t) * Math.sin((3.1 * t) / seconds));
  };
  /** How a landing differs from the one before. */
  const landAt = (from: Travel): Travel =>
    Math.min(from, stop + (sticky > 0 ? random.uniform() * sticky : random.between(0, 0.006)));
  const strokeSeconds = (): Seconds => Math.max(0.2, random.logBetween(0.5, 4) * pace);

  const turn = (to: Travel, seconds = strokeSeconds(), style: Style = hand): void => {
    const from = x;
    const away = to - from;
    const waves = random.between(1, 4);
    const phase = random.between(0, 6.28);
    const slips = Math.max(2, Math.round(Math.abs(away) / random.between(0.004, 0.02)));
    const slipPart = Math.min(1, (0.03 * slips) / seconds);
    const ramp = Math.min(0.4, 0.012 / seconds);
    const shapes: Record<Style, (u: number) => number> = {
      smooth: minimumJerk,
      steady: (u) => {
        const top = 1 / (1 - ramp);
        if (u < ramp) return (top * u * u) / (2 * ramp);
        if (u > 1 - ramp) return 1 - (top * (1 - u) ** 2) / (2 * ramp);
        return top * (u - ramp / 2);
      },
      wavering: (u) => {
        const wave = Math.sin(2 * Math.PI * waves * u + phase) - Math.sin(phase);
        const whole =
          1 -
          (0.9 / (2 * Math.PI * waves)) * (Math.sin(2 * Math.PI * waves + phase) - Math.sin(phase));
        return (u - (0.9 / (2 * Math.PI * waves)) * wave) / whole;
      },
      'stick and slip': (u) => {
        const place = u * slips;
        const done = Math.min(slips, Math.floor(place));
        return done === slips
          ? 1
          : (done + minimumJerk(Math.min(1, (place - done) / slipPart))) / slips;
      },
      jerky: (u) => minimumJerk(u ** 0.6),
    };
    const shape = shapes[style];
    way = 'hand';
    add('hand', seconds, (t) => from + away * shape(Math.min(1, t / seconds)));
  };
  const open = (seconds?: Seconds, style?: Style): void => turn(1, seconds, style);
  const close = (seconds?: Seconds, style?: Style): void => turn(landAt(x), seconds, style);

  /** Rebounds from a stop at `x`, each `share` of the one before. */
  const bounce = (first: Travel, share: number, side: 1 | -1, slow = 1): void => {
    const base = x;
    const arcs: { begin: Seconds; up: Seconds; down: Seconds; height: Travel }[] = [];
    let end = 0;
    for (let height = first; height > lowest && arcs.length < 5; height *= share) {
      const down = Math.max(0.004, fall * Math.sqrt(height) * slow);
      const up = down * rising;
      arcs.push({ begin: end, up, down, height });
      end += up + down;
    }
    if (arcs.length === 0) return;
    add('bounce', end, (t) => {
      const arc = arcs.findLast(({ begin }) => t >= begin)!;
      const late = t - arc.begin - arc.up;
      return (
        base + side * Math.max(0, arc.height * (1 - (late / (late < 0 ? arc.up : arc.down)) ** 2))
      );
    });
    x = base;
  };
  /** How much slower than free rebounds these are, so that none leaves its stop faster than it came. */
  const slowed = (height: Travel, speed: number): number =>
    Math.max(1, (2 * Math.sqrt(height)) / (rising * fall * 0.6 * speed));
  /** Let go: it falls by its spring to some place and rebounds where that is a stop. */
  const drop = (to: Travel = landAt(x), full = fall): void => {
    const from = x;
    const seconds = full * Math.sqrt(Math.max(0.01, from - to));
    way = 'fall';
    add('fall', seconds, (t) => from - (from - to) * (t / seconds) ** 2);
    x = to;
  };
  const release = (slow = 1): void => {
    const from = x;
    drop(landAt(x), fall * slow);
    bounce((from - x) * rebound, rebound, 1, slow);
  };
  /** Slid through the fingers, the last part sometimes free. */
  const slide = (): void => {
    const from = x;
    const free = random.chance(0.5) ? random.between(0.05, 0.3) * from : landAt(x);
    turn(free, random.between(0.1, 0.7) * Math.max(0.4, pace), 'wavering');
    way = 'fall';
    if (x > stop + sticky + 0.02) release();
    else bounce(0.02, rebound, 1, slowed(0.02, 2));
  };
  const dashpot = (): void => {
    const from = x;
    const to = landAt(x);
    const damped = Math.min(x * 0.7, random.between(0.05, 0.25));
    drop(damped);
    const speed = (2 * (from - damped)) / (fall * Math.sqrt(from - damped));
    const seconds = random.between(0.1, 0.5);
    const left = damped - to;
    // What stops the plate takes milliseconds, what lets it down a long time.
    const stopping = random.between(0.003, 0.01);
    const quick = Math.min(0.7 * left, stopping * speed);
    add('fall', seconds, (t) => {
      const rest = quick * Math.exp(-t / stopping) + (left - quick) * Math.exp((-6 * t) / seconds);
      return to + rest * (1 - t / seconds);
    });
  };
  /** Caught above closed and let go later. */
  const catchIt = (): void => {
    drop(Math.max(stop + 0.03, random.logBetween(0.03, 0.2)));
    hold(random.logBetween(0.1, 1.5) * Math.max(0.4, pace));
    release(random.between(1, 2));
  };
  /** Brought down quickly by the hand, the throttle bounces under it. */
  const handLanding = (): void => {
    const from = x;
    const to = landAt(x);
    const seconds = random.between(0.12, 0.4);
    way = 'hand';
    add('hand', seconds, (t) => from - (from - to) * (t / seconds) ** 1.6);
    x = to;
    const height = (from - to) * random.logBetween(0.02, 0.3);
    bounce(height, rebound, 1, slowed(height, (1.6 * (from - to)) / seconds));
  };
  /** A flick: thrown up, it rebounds from the open stop or turns back below it, and falls. */
  const throwUp = (): void => {
    const from = x;
    const reaches = random.chance(0.7);
    const top = reaches ? 1 : random.between(0.4, 0.97);
    const seconds = random.between(0.05, 0.13);
    const left = reaches ? random.between(0.2, 0.6) : 0;
    add('hand', seconds, (t) => {
      const u = t / seconds;
      return from + (top - from) * u * (2 - left - (1 - left) * u);
    });
    x = top;
    const down = random.between(0.04, 0.15);
    const to = landAt(x);
    const away = Math.min(0.8 / down, (random.between(0.2, 0.55) * left * (top - from)) / seconds);
    const pull = (top - to - away * down) / down ** 2;
    way = 'fall';
    add(reaches ? 'bounce' : 'fall', down, (t) => top - away * t - pull * t * t);
    x = to;
    bounce((top - to) * rebound, rebound, 1, down / fall);
  };
  /** Opened so hard that it bounces from the open stop under the hand. */
  const hardOpen = (): void => {
    const from = x;
    const seconds = random.between(0.08, 0.25);
    add('hand', seconds, (t) => from + (1 - from) * (t / seconds) ** 1.5);
    x = 1;
    const height = random.logBetween(0.01, 0.12);
    bounce(height, 0.25, -1, slowed(height, (1.5 * (1 - from)) / seconds));
  };
  const halfWay = (): Travel => random.between(0.25, 0.75);
  const turnScrew = (): void => {
    const from = stop;
    const seconds = random.between(0.4, 1.5) * pace;
    stop = idle;
    add('rest', seconds, (t) => from + (stop - from) * minimumJerk(t / seconds));
  };
  const slowly = (): void => {
    open();
    rest();
    close();
    rest();
  };
  const snap = (): void => {
    open();
    rest();
    release();
    rest();
  };
  const jumpOpen = (): void => {
    const unrecorded = true;
    add('hand', 0.4, () => 1, { unrecorded });
  };
  return {
    segments,
    landings,
    fall,
    pace,
    leg: random.logBetween(0.08, 0.5),
    rest,
    shake,
    hold,
    turn,
    open,
    close,
    release,
    slide,
    dashpot,
    catchIt,
    handLanding,
    throwUp,
    hardOpen,
    halfWay,
    turnScrew,
    slowly,
    snap,
    jumpOpen,
    restSeconds,
    spent: () => time,
    over: () => time >= most,
  };
}
type Mover = ReturnType<typeof mover>;

/** What is done once (first) and then again and again until the recording is long enough. */
const scripts: Record<Habit, (m: Mover, random: RandomStream, round: number) => void> = {
  plain: (m, random) => (random.chance(0.6) ? m.slowly() : m.snap()),
  'ten quick': (m, random) => {
    m.open(random.between(0.2, 0.4));
    if (random.chance(0.3)) m.rest(random.between(0.05, 0.2));
    m.close(random.between(0.2, 0.4));
    if (random.chance(0.4)) m.rest(random.between(0.05, 0.2));
  },
  thrown: (m, random) => {
    for (let i = random.whole(1, 4); i > 0; i--) {
      m.throwUp();
      m.rest();
    }
    m.slowly();
  },
  slid: (m) => {
    m.open();
    m.rest();
    m.slide();
    m.rest();
  },
  caught: (m, random) => {
    m.open();
    m.rest();
    m.catchIt();
    m.rest();
    if (random.chance(0.4)) m.slowly();
  },
  short: (m, random) => {
    for (let i = random.whole(1, 3); i > 0; i--) {
      m.turn(random.between(0.05, 0.35), random.between(0.15, 0.6));
      if (random.chance(0.6)) m.hold(random.between(0.05, 0.5));
      m.release(random.between(1, 3));
      m.rest();
    }
    m.slowly();
  },
  dashpot: (m) => {
    m.open();
    m.rest();
    m.dashpot();
    m.rest();
  },
  'hand landing': (m) => {
    m.open();
    m.rest();
    m.handLanding();
    m.rest();
  },
  'half open': (m, random) => {
    m.turn(m.halfWay());
    m.hold(random.between(1, 6) * m.pace);
    if (random.chance(0.5)) m.release();
    else m.close();
    m.rest();
    m.slowly();
  },
  'idle screw': (m, _random, round) => {
    m.slowly();
    if (round === 1) m.turnScrew();
    m.rest();
    m.snap();
  },
  slack: (m) => m.slowly(),
  motor: (m, random, round) => {
    void round;
    m.open(m.leg, 'steady');
    if (random.chance(0.2)) m.rest(0.1);
    m.close(m.leg, 'steady');
    if (random.chance(0.2)) m.rest(0.1);
  },
  tapped: (m, random) => {
    m.slowly();
    m.shake(random.between(0.5, 2) * m.pace, random.pick(['housing-tapped', 'harness-flexed']));
  },
  cut: (m, random) => (random.chance(0.5) ? m.snap() : m.throwUp()),
  'long open': (m, random) => {
    m.open();
    m.rest(random.between(2, 12) * m.pace);
    m.close();
    m.rest();
  },
  mixed: (m, random) => {
    const way = random.pick(['slide', 'dashpot', 'catchIt', 'handLanding', 'release'] as const);
    const opening = random.uniform();
    if (opening < 0.3) m.hardOpen();
    else {
      if (opening < 0.5) m.turn(m.halfWay());
      m.open();
    }
    m.rest();
    m[way]();
    m.rest();
    if (random.chance(0.5)) m.slowly();
    if (random.chance(0.2)) m.throwUp();
  },
  'only snaps': (m) => {
    m.jumpOpen();
    m.rest();
    m.release();
    m.rest();
  },
  'one stroke': (m, _random, round) => {
    if (round > 0) m.rest(0.3);
    else m.open();
  },
  partial: (m, random) => {
    m.turn(random.between(0.25, 0.8));
    m.hold();
    if (random.chance(0.4)) m.release();
    else m.close();
    m.rest();
  },
};

/** Moves by a habit, from a rest at the closed stop, for some seconds. */
export function drawMotion(habit: Habit, bounds: MotionBounds, random: RandomStream): Motion {
  const m = mover(bounds, random);
  if (habit !== 'only snaps') m.rest();
  const rounds = {
    'one stroke': 2,
    'ten quick': 10,
    motor: 400,
    'only snaps': 6,
    cut: 5,
  } as Partial<Record<Habit, number>>;
  const most = rounds[habit] ?? random.whole(3, 6);
  const isWhole = !['only snaps', 'one stroke', 'partial'].includes(habit);
  // Whatever else is done, the throttle is mostly turned through once.
  if (isWhole && random.chance(0.7)) m.slowly();
  for (let round = 0; round < most && !m.over(); round++) scripts[habit](m, random, round);
  if (habit === 'ten quick' || habit === 'motor') m.rest();
  if (habit === 'cut' && !m.over()) {
    m.slowly();
    m.open();
    m.release();
  }
  const { segments, landings, fall } = m;
  const slack = habit === 'slack' ? random.between(0.01, 0.05) : 0;
  // A stroke more or less is let end.
  return { segments, landings, total: Math.min(m.spent(), 1.3 * bounds.most), slack, fall };
}

/** Travel on an even grid, and for each place the index of its segment. */
export function travelOver(
  motion: Motion,
  step: Seconds,
): { travel: Float64Array; segment: Uint16Array } {
  const { segments, total, slack } = motion;
  const count = Math.max(2, Math.floor(total / step));
  const travel = new Float64Array(count);
  const segment = new Uint16Array(count);
  let now = 0;
  for (let i = 0; i < count; i++) {
    const t = i * step;
    while (now < segments.length - 1 && t >= segments[now + 1]!.start) now++;
    const { start, at } = segments[now]!;
    travel[i] = at(t - start);
    segment[i] = now;
  }
  if (slack > 0) {
    // The lever goes further than the shaft by its play.
    let shaft = 0;
    for (let i = 0; i < count; i++) {
      const lever = travel[i]! * (1 + slack) - slack / 2;
      shaft = Math.min(lever + slack / 2, Math.max(lever - slack / 2, shaft));
      travel[i] = shaft;
    }
  }
  return { travel, segment };
}
