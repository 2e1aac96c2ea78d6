import {
  type Circuit,
  type Connection,
  type Expectation,
  expectation,
  type Ohms,
  type Volts,
} from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/** Output over the place of the wiper on the track, V. */
export type Output = (position: number) => Volts;

/** A sensor as it is, on a bench, with what is expected of it. */
export interface Bench {
  readonly expected: Expectation;
  readonly span: Volts;
  readonly source: Volts;
  readonly rising: boolean;
  /** The place of the wiper on the track for a share of its way between the stops. */
  readonly place: (share: number) => number;
  readonly output: Output;
  readonly without: (lead: 'supply' | 'ground') => Output;
  readonly connected: (connection: Connection) => Output;
  readonly brokenAt: (position: number) => Output;
  /** Where a lifted wiper leaves the output, V. */
  readonly lifted: Volts;
  /** Voltage across the sensor's end terminals, V. */
  readonly supply: Volts;
  /** The share of its way that the wiper has gone, over travel: not always the straight line. */
  readonly shape: (travel: number) => number;
  readonly shapeName: string;
  /** Play of the wiper on its shaft, travel. */
  readonly hysteresis: number;
  readonly load: string;
}

export interface BenchWish {
  /** How far above its stop the throttle may come to lie, travel. */
  readonly above: number;
  /** Shares of the span by which the end readings are off. */
  readonly closedOff: number;
  readonly openOff: number;
  /** Closed and open readings as far from the middle as each other. */
  readonly mirrored: boolean;
  readonly random: RandomStream;
}

interface Load {
  readonly pullDown: Ohms;
  /** To a reference of the source's voltage. */
  readonly pullUp?: Ohms;
}

const loads: readonly (readonly [string, Load])[] = [
  ['10 MΩ', { pullDown: 10e6 }],
  ['1 MΩ', { pullDown: 1e6 }],
  ['100 kΩ', { pullDown: 100e3 }],
  ['heavy', { pullDown: 22e3 }],
  ['pull-up', { pullDown: 10e6, pullUp: 47e3 }],
  ['heavy pull-up', { pullDown: 1e6, pullUp: 10e3 }],
];

/** How much of its tolerance a part uses at most. */
const used = 0.5;

export function drawBench({ above, closedOff, openOff, mirrored, random }: BenchWish): Bench {
  const tolerances = {
    source: 0.01,
    limiter: 0.05,
    track: 0.1,
    pullDown: 0.02,
    pullUp: 0.02,
    closedPosition: 0.03,
    openPosition: 0.03,
  };
  const low = random.between(0.06, 0.16);
  const ends = [low, mirrored ? 1 - low : random.between(0.78, 0.93)] as const;
  const rising = random.chance(0.7);
  const [closedPosition, openPosition] = rising ? ends : ([ends[1], ends[0]] as const);
  const volts = random.pick([5, 5, 5, 3.3, 9, 12]);
  const limiter = mirrored ? 0 : random.pick([0, 470, 1000, 1000, 2200]);
  const track = random.pick([1000, 2200, 4700, 5000, 10_000]);
  const [name, load] = random.pick(mirrored ? loads.slice(0, 3) : loads);
  const sensor = { track, closedPosition, openPosition };
  const { pullDown, pullUp } = load;
  const circuit: Circuit = {
    source: { volts },
    limiter,
    sensor,
    load: { pullDown, ...(pullUp !== undefined && { pullUp: { ohms: pullUp, volts } }) },
  };
  const expected = expectation(circuit, tolerances);
  const off = (tolerance: number): number => random.between(-used, used) * tolerance;
  const way = openPosition - closedPosition;
  // A throttle that does not lie at its very stop is set so that its readings stay in the window.
  const closed =
    closedPosition + off(tolerances.closedPosition) - (above / 2) * way + closedOff * way;
  const open = openPosition + off(tolerances.openPosition) + openOff * way;
  const actual: HookUp = {
    source: volts * (1 + off(tolerances.source)),
    limiter: limiter * (1 + off(tolerances.limiter)),
    track: track * (1 + off(tolerances.track)),
    pullDown,
    reference: volts,
    pullUp: pullUp ?? 1e12,
  };
  const { windows } = expected;
  const feed = terminals(actual, 0.3);
  const [shapeName, shape] = drawShape(random);
  return {
    expected,
    span: Math.abs(windows.open.nominal - windows.closed.nominal),
    source: volts,
    rising,
    place: (share) => closed + share * (open - closed),
    output: outputOver(actual),
    without: (lead) => outputOver({ ...actual, broken: lead }),
    connected: (connection) => outputOver({ ...actual, connection }),
    brokenAt: (crack) => outputOver({ ...actual, crack }),
    lifted: terminals({ ...actual, isLifted: true }, 0.5)[1]!,
    supply: feed[2]! - feed[0]!,
    shape,
    shapeName,
    hysteresis: random.chance(0.3) ? random.between(0.005, 0.016) : 0,
    load: name,
  };
}

/** A hook-up as it is: its resistances, and what is wrong with it. */
interface HookUp {
  readonly source: Volts;
  readonly limiter: Ohms;
  readonly track: Ohms;
  readonly pullDown: Ohms;
  readonly pullUp: Ohms;
  /** Where the pull-up leads. */
  readonly reference: Volts;
  readonly connection?: Connection;
  readonly broken?: 'supply' | 'ground';
  readonly isLifted?: boolean;
  /** Where the track is broken. */
  readonly crack?: number;
}

const numbers = { bottom: 0, wiper: 1, top: 2 } as const;

/** Voltages of bottom, wiper and top by node analysis; what nothing pulls anywhere leaks to ground. */
function terminals(hookUp: HookUp, position: number): readonly Volts[] {
  const { source, limiter, track, pullDown, pullUp, broken, isLifted, crack } = hookUp;
  const { supply, ground, signal } = hookUp.connection ?? {
    supply: 'top',
    ground: 'bottom',
    signal: 'wiper',
  };
  const leak = 1e-13;
  const g = [0, 1, 2].map((i) => [0, 1, 2].map((k) => (i === k ? leak : 0)));
  const amps = [0, 0, 0];
  const between = (a: number, b: number, ohms: Ohms): void => {
    const siemens = 1 / Math.max(0.01, ohms);
    g[a]![a]! += siemens;
    g[b]![b]! += siemens;
    g[a]![b]! -= siemens;
    g[b]![a]! -= siemens;
  };
  const toVolts = (node: number, ohms: Ohms, volts: Volts): void => {
    g[node]![node]! += 1 / Math.max(0.01, ohms);
    amps[node]! += volts / Math.max(0.01, ohms);
  };
  const isBelow = crack === undefined || position < crack;
  if (isLifted) between(0, 2, track);
  else {
    if (isBelow) between(0, 1, position * track);
    if (crack === undefined || !isBelow) between(1, 2, (1 - position) * track);
  }
  if (broken !== 'supply') toVolts(numbers[supply], limiter, source);
  if (broken !== 'ground') toVolts(numbers[ground], 0, 0);
  toVolts(numbers[signal], pullDown, 0);
  toVolts(numbers[signal], pullUp, hookUp.reference);
  for (let i = 0; i < 3; i++)
    for (let k = i + 1; k < 3; k++) {
      const share = g[k]![i]! / g[i]![i]!;
      for (let column = i; column < 3; column++) g[k]![column]! -= share * g[i]![column]!;
      amps[k]! -= share * amps[i]!;
    }
  const volts = [0, 0, 0];
  for (let i = 2; i >= 0; i--) {
    let rest = amps[i]!;
    for (let k = i + 1; k < 3; k++) rest -= g[i]![k]! * volts[k]!;
    volts[i] = rest / g[i]![i]!;
  }
  return volts;
}

/** The solved hook-up at many places, straight lines between them. */
function outputOver(hookUp: HookUp): Output {
  const places = 200;
  const signal = numbers[hookUp.connection?.signal ?? 'wiper'];
  const solved = Float64Array.from(
    { length: places + 1 },
    (_, i) => terminals(hookUp, i / places)[signal]!,
  );
  return (position) => {
    const at = Math.min(places - 1e-9, Math.max(0, position * places));
    const below = Math.floor(at);
    return solved[below]! + (at - below) * (solved[below + 1]! - solved[below]!);
  };
}

/** Straight, bent within its linearity, with a knee or a flat at an end by design, or in the steps of a wire-wound track. */
function drawShape(random: RandomStream): readonly [string, (travel: number) => number] {
  const bend = random.between(-0.015, 0.015);
  const wave = random.between(-0.008, 0.008);
  const at = random.between(0.03, 0.12);
  const slope = random.between(0.2, 0.6);
  const turns = random.whole(120, 500);
  switch (random.pick(['straight', 'straight', 'bent', 'knee', 'flat', 'steps'] as const)) {
    case 'straight':
      return ['straight', (x) => x];
    case 'bent':
      return ['bent', (x) => x + bend * Math.sin(Math.PI * x) + wave * Math.sin(2 * Math.PI * x)];
    case 'knee': {
      const knee = 1 - 2 * at;
      const rise = 1 / (knee + (1 - knee) * slope);
      return ['knee', (x) => rise * (x < knee ? x : knee + (x - knee) * slope)];
    }
    case 'flat': {
      const atOpen = random.chance(0.5);
      const flat = at / 2;
      return [
        'flat',
        (x) => (atOpen ? Math.min(1, x / (1 - flat)) : Math.max(0, (x - flat) / (1 - flat))),
      ];
    }
    case 'steps':
      return ['steps', (x) => Math.round(x * turns) / turns];
  }
}
