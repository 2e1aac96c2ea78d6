import {
  type Circuit,
  type Expectation,
  expectation,
  type Fraction,
  type Ohms,
  type ReadingWindow,
  type Tolerances,
  type Travel,
  type Volts,
} from '@truesweep/core';
import { divided, noLegs, type Parts } from '../divider.js';
import type { RandomStream } from '../simulator/randomStream.js';
import { windowOfParts } from '../trueWindows.js';

/** Where the load pulls a lifted wiper. */
export const restLevel = (parts: Parts): Volts =>
  ((parts.pullUpVolts ?? parts.volts) * parts.pullDown) / (parts.pullUp + parts.pullDown) || 0;

/** The contact resistance that leaves a voltage between the sound one and the rest level. */
export function contactFor(parts: Parts, position: number, left: Volts): Ohms {
  const [low, high] = [1e-3, 1e12].map(Math.log) as [number, number];
  const rest = restLevel(parts);
  const sound = divided(parts, position, noLegs);
  return bisected(low, high, (contact) => {
    const reached = divided(parts, position, { ...noLegs, contact });
    return (sound - reached) / (sound - rest) < (sound - left) / (sound - rest);
  });
}

/** The resistance at which something is no longer so; searched in its logarithm. */
export function bisected(from: number, to: number, isLess: (ohms: Ohms) => boolean): Ohms {
  let [low, high] = [from, to];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (isLess(Math.exp(middle))) low = middle;
    else high = middle;
  }
  return Math.exp(high);
}

const tolerances = {
  source: 0.01,
  limiter: 0.05,
  track: 0.1,
  closedPosition: 0.025,
  openPosition: 0.03,
} as const;

/** Of a deliberate load too; an instrument's input is known. */
const loadTolerance = 0.05;

const tolerancesOf = ({ pullDown, pullUp }: Parts): Tolerances => ({
  ...tolerances,
  ...(pullDown < 200e3 && { pullDown: loadTolerance }),
  // An output that may turn back costs a search in every corner; its limiter was measured.
  ...(pullUp < Number.POSITIVE_INFINITY && { pullUp: loadTolerance, limiter: 0 }),
});

/** Where a sound sensor's reading at an end lies. */
export const windowOf = (parts: Parts, end: 'closed' | 'open'): ReadingWindow =>
  windowOfParts(parts, tolerancesOf(parts), end);

/** How the position follows the travel by design. */
export interface Shape {
  readonly bend: Fraction;
  readonly wave: Fraction;
  /** No more change of position within so much travel of an end. */
  readonly flat: { readonly closed: Travel; readonly open: Travel };
  /** Another slope above a travel: so much more position there. */
  readonly knee: { readonly at: Travel; readonly more: Fraction };
  /** Travel from turn to turn of a wire-wound track; 0 for a film. */
  readonly turns: Travel;
  readonly backlash: Travel;
}

export interface Bench extends Unexpected {
  readonly expected: Expectation;
}

interface Unexpected {
  readonly circuit: Circuit;
  readonly span: Volts;
  readonly nominal: Parts;
  readonly actual: Parts;
  readonly shape: Shape;
  readonly restTime: number;
  readonly load: string;
}

/** Place of the wiper on the track. */
export function positionOf({ actual, shape }: Unexpected, travel: Travel): number {
  const { flat, knee, bend, wave, turns } = shape;
  let x = turns > 0 ? Math.round(travel / turns) * turns : travel;
  x =
    (Math.min(1 - flat.open, Math.max(flat.closed, x)) - flat.closed) /
    (1 - flat.open - flat.closed);
  if (flat.closed === 0 && travel < 0) x = travel;
  if (knee.more !== 0)
    x =
      x < knee.at
        ? x * (1 - knee.more)
        : 1 - ((1 - x) * (1 - knee.at * (1 - knee.more))) / (1 - knee.at);
  x += bend * 4 * x * (1 - x) + wave * Math.sin(2 * Math.PI * x);
  return Math.min(1, Math.max(0, actual.closed + (actual.open - actual.closed) * x));
}

const loads = [
  { name: 'meter', pullDown: 10e6 },
  { name: 'meter', pullDown: 10e6 },
  { name: 'scope', pullDown: 1e6 },
  { name: 'pull-down', pullDown: 100e3 },
  { name: 'bench pull-down', pullDown: 10e3 },
  { name: 'bench pull-down', pullDown: 4700 },
  { name: 'bench pull-down', pullDown: 2200 },
  { name: 'pull-up', pullDown: 10e6, pullUp: 100e3, pullUpVolts: 5 },
  { name: 'bench pull-up', pullDown: 1e6, pullUp: 10e3 },
  { name: 'bench pull-up', pullDown: 10e6, pullUp: 4700 },
] as const;

/** A hook-up whose actual parts leave a sound sensor within its windows, with a little to spare. */
export function drawBench(random: RandomStream): Bench {
  for (;;) {
    const bench = drawAny(random);
    if (bench && isWithin(bench))
      return { ...bench, expected: expectation(bench.circuit, tolerancesOf(bench.nominal)) };
  }
}

function isWithin(bench: Unexpected): boolean {
  const spare = 0.006 * bench.span;
  const fits = (end: 'closed' | 'open', places: readonly Travel[]): boolean => {
    const { low, high } = windowOf(bench.nominal, end);
    return places.every((travel) => {
      const volts = soundAt(bench, travel);
      return volts > low + spare && volts < high - spare;
    });
  };
  // A load that makes the closed end much steeper than the rest makes its smallest scatter large.
  if (Math.abs(soundAt(bench, 0.02) - soundAt(bench, 0)) > 0.028 * bench.span) return false;
  return fits('closed', [-0.006, 0.018]) && fits('open', [0.99, 1.005]);
}

export const soundAt = (bench: Unexpected, travel: Travel): Volts =>
  divided(bench.actual, positionOf(bench, travel), noLegs);

function drawAny(random: RandomStream): Unexpected | undefined {
  const ends = [random.between(0.05, 0.16), random.between(0.78, 0.94)] as const;
  const [closed, open] = random.chance(0.7) ? ends : [ends[1], ends[0]];
  const load = random.pick(loads);
  const volts = random.pick([5, 5, 5, 3.3, 9, 12]);
  const nominal: Parts = {
    volts,
    limiter: random.pick([0, 330, 1000, 1000, 1000, 2200]),
    track: random.pick([1000, 2000, 4700, 5000, 10_000]),
    closed,
    open,
    pullDown: load.pullDown,
    pullUp: 'pullUp' in load ? load.pullUp : Number.POSITIVE_INFINITY,
    ...('pullUpVolts' in load && { pullUpVolts: load.pullUpVolts }),
  };
  const at = (position: number): Volts => divided(nominal, position, noLegs);
  const span = Math.abs(at(open) - at(closed));
  const most = Math.max(at(0.03), at(0.97), at(0.5)) - Math.min(at(0.03), at(0.97), at(0.5));
  // Where the load flattens the curve too much nobody would record it so.
  if (span < 0.25 * volts || most > 1.25 * span) return undefined;
  const parts = tolerancesOf(nominal);
  const off = (tolerance = 0): number => 1 + random.between(-0.6, 0.6) * tolerance;
  const actual: Parts = {
    ...nominal,
    volts: volts * off(tolerances.source),
    limiter: nominal.limiter * off(parts.limiter),
    track: nominal.track * off(tolerances.track),
    closed: closed + random.between(-0.6, 0.6) * tolerances.closedPosition,
    open: open + random.between(-0.6, 0.6) * tolerances.openPosition,
    pullDown: nominal.pullDown * off(loadTolerance),
    pullUp: nominal.pullUp * off(loadTolerance),
  };
  const rarely = (chance: number, low: number, high: number): number =>
    random.chance(chance) ? random.between(low, high) : 0;
  const loadOf = {
    pullDown: nominal.pullDown,
    ...(nominal.pullUp < Number.POSITIVE_INFINITY && {
      pullUp: nominal.pullUpVolts
        ? { ohms: nominal.pullUp, volts: nominal.pullUpVolts }
        : { ohms: nominal.pullUp, from: 'source' as const },
    }),
  };
  const circuit: Circuit = {
    source: { volts },
    limiter: nominal.limiter,
    sensor: { track: nominal.track, closedPosition: closed, openPosition: open },
    load: loadOf,
  };
  const parallel = 1 / (1 / nominal.pullDown + 1 / nominal.pullUp);
  return {
    circuit,
    span,
    nominal,
    actual,
    shape: {
      bend: rarely(0.7, -0.012, 0.012),
      wave: rarely(0.4, -0.004, 0.004),
      flat: { closed: rarely(0.1, 0.01, 0.04), open: rarely(0.1, 0.01, 0.05) },
      knee: { at: random.between(0.85, 0.95), more: rarely(0.1, -0.02, 0.02) },
      turns: rarely(0.12, 0.002, 0.007),
      backlash: rarely(0.4, 0.001, 0.008),
    },
    restTime: parallel * random.logBetween(30e-12, 1e-9),
    load: load.name,
  };
}

/** The sound output of many travels, from a table. */
export function soundOver(bench: Bench, travel: Float64Array): Float64Array {
  const { turns } = bench.shape;
  const smooth = { ...bench, shape: { ...bench.shape, turns: 0 } };
  const [low, per, places] = [-0.1, 4000, 4800];
  const table = Float64Array.from({ length: places + 2 }, (_, i) => soundAt(smooth, low + i / per));
  return travel.map((x) => {
    const at = ((turns > 0 ? Math.round(x / turns) * turns : x) - low) * per;
    const below = Math.max(0, Math.min(places, Math.floor(at)));
    return table[below]! + (at - below) * (table[below + 1]! - table[below]!);
  });
}

/** Play between shaft and wiper: the wiper follows half of it behind. */
export function wiperOf(travel: Float64Array, backlash: Travel): Float64Array {
  if (backlash === 0) return travel;
  let at = travel[0]!;
  return travel.map((x) => {
    at = Math.min(x + backlash / 2, Math.max(x - backlash / 2, at));
    return at;
  });
}
