import type { Cause, Seconds, Verdict, Volts } from '@truesweep/core';
import { type RandomStream, randomStream } from '../simulator/randomStream.js';
import type { WorldCase } from '../worlds/worldCase.js';
import { isAdequate, type Stretch } from './adequacy.js';
import { type Bench, drawBench, soundOver, windowOf, wiperOf } from './bench.js';
import {
  endOutcomes,
  eventOutcomes,
  fairVerdicts,
  interferenceOutcomes,
  isSure,
  type Outcome,
  restOutcomes,
  type SeenEvent,
} from './fairVerdicts.js';
import { excessOf, type Family, families, misconnected, withWrongEnd } from './families.js';
import type { Mark } from './faults.js';
import { drawDeeds, type Habit, habits, springHabits } from './habits.js';
import { bouncing, drawArm, falling, type Motion, move } from './move.js';
import {
  drawRecorder,
  heldAt,
  instantsOf,
  type RecorderSet,
  visibleOf,
  written,
} from './recorder.js';
import { drawThrottle, fallTime } from './throttle.js';

/** A recording of a plate that obeys its equation of motion; sound for even seeds, something is wrong for odd ones. */
export function playPlate(seed: number): WorldCase {
  const random = randomStream(Math.imul(seed + 1013, 0x2545f491) ^ 0x1b873593);
  const family = seed % 2 === 0 ? undefined : families[(seed >> 1) % families.length];
  const habit = random.pick(family?.name === 'closed rest scatters' ? springHabits : habits);
  const sound = drawBench(random);
  const bench = family?.name === 'ends wrong' ? withWrongEnd(sound, random) : sound;
  const set = clipped(family, bench, drawRecorder(bench, random), random);
  const acted = act(habit, set, family, random);
  const { motion, kept, edges } = acted;
  const wiper = wiperOf(motion.travel, bench.shape.backlash);
  const clean = soundOver(bench, wiper);
  const wiring = ['no output', 'exchanged', 'miswired'].find((name) => name === family?.name);
  const volts = wiring ? misconnected(wiring, bench, wiper, random) : clean.slice();
  const instants = instantsOf(set, kept.from * motion.step, kept.to * motion.step, random);
  const limit = visibleOf(set, bench.span, instants.length);
  const visible = limit / bench.span;
  const scene = { bench, step: motion.step, wiper, sound: clean, volts, visible: limit, random };
  const marks = family?.add?.(scene) ?? [];
  const held = heldAt(set, instants, volts, motion.step);
  const heldSound = marks.length > 0 ? heldAt(set, instants, clean, motion.step) : held;
  const origin = instants[0]! - random.pick([0, 0, set.interval, random.between(0, 5)]);
  const recorded = { set, instants, held, heldSound, origin, limit };
  const seen = marks.flatMap((mark) => seenEvent(mark, motion, recorded));
  const truth = judged(family, bench, volts, motion, kept, seen, recorded, visible);
  const events = seen.map(({ samples: _, swept: __, ...event }) => event);
  return {
    seed,
    family: family?.name ?? 'sound',
    factors: {
      ...factorsOf(set, instants.length),
      habit,
      edges,
      load: bench.load,
      ...acted.factors,
    },
    sound: family === undefined || family.name === 'clipped',
    ...truth,
    expected: bench.expected,
    told: set.told,
    sweep: written(set, instants, held, origin, random),
    events,
    bounces: bouncesOf(motion, kept, origin).filter(
      ({ start, end }) => !events.some((event) => event.start <= end && event.end >= start),
    ),
    visible,
  };
}

/** A range that ends within the span. */
function clipped(
  family: Family | undefined,
  { span, expected }: Bench,
  set: RecorderSet,
  random: RandomStream,
): RecorderSet {
  if (family?.name !== 'clipped') return set;
  const { closed, open } = expected.windows;
  const cut = random.between(0.08, 0.5) * span;
  const isHigh = random.chance(0.7);
  const range = isHigh
    ? { low: set.low, high: Math.max(closed.nominal, open.nominal) - cut }
    : { low: Math.min(closed.nominal, open.nominal) + cut, high: set.high };
  const step = (range.high - range.low) / 2 ** set.bits;
  const told = { ...set.told, range, ...(set.told.resolution && { resolution: step }) };
  return { ...set, ...range, step, told };
}

/** What was done to the throttle, and which part of it was recorded. */
function act(habit: Habit, set: RecorderSet, family: Family | undefined, random: RandomStream) {
  const throttle = drawThrottle(random);
  const isFast = set.interval < 1e-4;
  const wanted = random.logBetween(5e3, 6e4) * set.interval;
  const seconds = Math.min(isFast ? 2 : 16, Math.max(isFast ? 1 : 4, wanted));
  const stroke = random.logBetween(0.2, Math.max(0.4, Math.min(4, seconds / 4)));
  const strokes = strokeOf(habit, stroke);
  const scatter =
    family?.name === 'closed rest scatters'
      ? random.logBetween(0.05, 0.3)
      : random.between(0, 0.003);
  const motion = move(
    throttle,
    drawArm(throttle, habit === 'motor', random),
    drawDeeds(habit, strokes, seconds, random),
    1.5 * seconds + 3,
    isFast ? 2e-5 : 1e-4,
    () => random.between(0, scatter),
    random,
  );
  const { kept, edges } = crop(motion, random);
  const fall = fallTime(throttle, 1, 1e-4);
  const factors = {
    stroke: strokes < 0.5 ? '0.2 s' : strokes < 1.5 ? '1 s' : '3 s',
    fall: fall < 0.02 ? '10 ms' : fall < 0.06 ? '30 ms' : fall < 0.15 ? '0.1 s' : '0.3 s',
    stop: throttle.closedStop.frequency > 0 ? 'soft' : 'hard',
    dashpot: throttle.dashpot.below > 0 ? 'with' : 'without',
  };
  return { motion, kept, edges, factors };
}

/** Seconds of a stroke: motors and screwdrivers are never quick. */
function strokeOf(habit: Habit, seconds: Seconds): Seconds {
  if (habit === 'quick') return Math.min(0.5, seconds);
  const least: Partial<Record<Habit, Seconds>> = { slow: 1, screwdriver: 2, motor: 0.7 };
  return Math.max(least[habit] ?? 0, seconds);
}

/** A recording may begin and end anywhere. */
function crop(
  { step, travel, state }: Motion,
  random: RandomStream,
): { kept: Stretch; edges: string } {
  const whole = { from: 0, to: travel.length - 1 };
  const edges = random.pick([
    'whole',
    'whole',
    'whole',
    'begins within',
    'ends within',
    'ends in rebound',
  ] as const);
  const early = whole.to * random.between(0.05, 0.25);
  if (edges === 'begins within') return { kept: { ...whole, from: Math.floor(early) }, edges };
  if (edges === 'ends within')
    return { kept: { ...whole, to: Math.floor(whole.to - early) }, edges };
  if (edges === 'whole') return { kept: whole, edges };
  let to = whole.to;
  while (to > whole.to / 2 && !(state[to]! & bouncing)) to--;
  if (to <= whole.to / 2) return { kept: whole, edges: 'whole' };
  return { kept: { from: 0, to: to - Math.floor(random.between(0, 0.02) / step) }, edges };
}

interface Recorded {
  readonly set: RecorderSet;
  readonly instants: Float64Array;
  readonly held: Float64Array;
  readonly heldSound: Float64Array;
  readonly origin: Seconds;
  readonly limit: Volts;
}

/** A mark as it was recorded; nothing where no sample shows it. */
function seenEvent(mark: Mark, motion: Motion, recorded: Recorded): readonly SeenEvent[] {
  const { instants, held, heldSound, origin, limit, set } = recorded;
  const { step, travel, state } = motion;
  const [from, to] = [Math.max(0, mark.from), Math.min(travel.length - 1, mark.to)];
  const late = set.averaged ? set.interval : 0;
  const first = firstAt(instants, from * step);
  const last = firstAt(instants, to * step + late + 1e-9);
  if (mark.jump !== undefined && (first === 0 || last >= instants.length)) return [];
  let [most, samples] = [mark.jump ?? 0, 0];
  for (let i = first; i < last && mark.jump === undefined; i++) {
    const off = Math.abs(held[i]! - heldSound[i]!);
    most = Math.max(most, off);
    if (off >= limit) samples++;
  }
  if (most < 0.2 * limit) return [];
  let fast = false;
  for (let i = Math.max(0, from - 20); i <= Math.min(state.length - 1, to + 20); i++)
    if (state[i]! & (falling | bouncing)) fast = true;
  const [a, b] = [Math.max(0, from - 5), Math.min(travel.length - 1, to + 5)];
  const speed = Math.abs(travel[b]! - travel[a]!) / ((b - a) * step);
  return [
    {
      kinds: mark.kinds,
      start: Math.max(from * step, instants[0]!) - origin,
      end: Math.min(to * step + late, instants.at(-1)!) - origin,
      from: travel[from]!,
      to: travel[to]!,
      ratio: most / limit,
      fast,
      speed,
      swept: speed * set.interval,
      samples: mark.jump === undefined ? samples : 3,
    },
  ];
}

function firstAt(sorted: Float64Array, value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What a fair judge may say of it. */
function judged(
  family: Family | undefined,
  bench: Bench,
  volts: Float64Array,
  motion: Motion,
  kept: Stretch,
  events: readonly SeenEvent[],
  recorded: Recorded,
  visible: number,
): { verdicts: readonly Verdict[]; causes?: readonly Cause[]; adequate?: boolean } {
  const name = family?.name ?? 'sound';
  const whole = isAdequate(recorded.set, visible, motion, kept);
  const told = (adequate: boolean | undefined) => (adequate === undefined ? {} : { adequate });
  const readings = endReadings(bench, volts, motion, kept);
  if (name === 'clipped') {
    const isPlain = recorded.set.told.range !== undefined;
    return isPlain
      ? { adequate: false, verdicts: ['inconclusive'], causes: ['recording', 'none'] }
      : { verdicts: ['inconclusive', 'fail', 'marginal'] };
  }
  if (name === 'no output')
    return {
      ...told(whole && undefined),
      verdicts: whole ? ['fail'] : ['fail', 'inconclusive'],
      causes: family!.causes,
    };
  if (name === 'exchanged' || name === 'miswired') {
    const excess = levelsExcess(bench, readings.all);
    if (excess < 0.15)
      return { ...told(whole), verdicts: ['pass', 'marginal', 'fail', 'inconclusive'] };
    const causes: readonly Cause[] = excess > 0.4 ? ['wiring'] : ['wiring', 'ends'];
    return { ...told(whole), verdicts: whole ? ['fail'] : ['fail', 'inconclusive'], causes };
  }
  const bothWays = goesBothWays(events, recorded);
  const ofEvents =
    name === 'interference'
      ? interferenceOutcomes(events, bothWays)
      : eventOutcomes(events, visible);
  const parts: readonly (readonly Outcome[])[] = [
    ofEvents,
    endOutcomes(readings.closed),
    ...readings.ranges.map(({ range, count, byHand }) => restOutcomes(range, count, byHand)),
    // Where some reached the open stop, others may have been stopped short.
    endOutcomes(Math.max(readings.beyond, readings.leastShort)),
    ...(readings.mostShort > readings.leastShort + 0.005 && readings.mostShort > 0
      ? [['conforms', ...endOutcomes(readings.mostShort)] as const]
      : []),
  ];
  // Where all are short, nobody knows that it was the stop.
  const isShort = readings.leastShort > -0.005 && readings.beyond < readings.leastShort;
  const verdicts = [
    ...fairVerdicts(
      name === 'open crack' ? [['fails']] : parts,
      isShort ? whole && undefined : whole,
    ),
  ];
  if (name === 'interference' && !verdicts.includes('inconclusive') && ofEvents.length > 1)
    verdicts.push('inconclusive');
  const causes = causesOf(family, events, visible, parts, whole, bothWays);
  return { ...told(whole), verdicts, ...(causes && { causes }) };
}

/** Readings at the stops, of the middle of every rest that was recorded. */
function endReadings(bench: Bench, volts: Float64Array, motion: Motion, kept: Stretch) {
  const readings = motion.rests.flatMap(({ at, way, from, to }) => {
    const [a, b] = [Math.max(from, kept.from), Math.min(to, kept.to)];
    if ((b - a) * motion.step < 0.06) return [];
    const some = Float64Array.from(
      { length: 15 },
      (_, i) => volts[a + Math.floor(((b - a) * (i + 0.5)) / 15)]!,
    );
    return [{ at, way, volts: some.sort()[7]! }];
  });
  const of = (end: 'closed' | 'open') => readings.filter(({ at }) => at === end);
  const closed = of('closed').map((one) => excessOf(bench, 'closed', one.volts));
  const { low, high } = windowOf(bench.nominal, 'open');
  const isRising = bench.nominal.open > bench.nominal.closed;
  const short = of('open').map(({ volts: v }) => (isRising ? low - v : v - high) / bench.span);
  const beyond = of('open').map(({ volts: v }) => (isRising ? v - high : low - v) / bench.span);
  const ranges = [['hand', 'start'], ['spring'], ['start', 'spring', 'hand']].map((ways) => {
    const all = of('closed')
      .filter(({ way }) => ways.includes(way))
      .map((one) => one.volts);
    const range = all.length > 1 ? (Math.max(...all) - Math.min(...all)) / bench.span : 0;
    return { range, count: all.length, byHand: ways.includes('hand') };
  });
  return {
    closed: Math.max(-1, ...closed),
    beyond: Math.max(-1, ...beyond),
    leastShort: short.length > 0 ? Math.min(...short) : -1,
    mostShort: Math.max(-1, ...short),
    ranges,
    all: readings.map((one) => one.volts),
  };
}

/** How far the lowest and the highest level lie from the windows, whichever end they are. */
function levelsExcess(bench: Bench, volts: readonly Volts[]): number {
  if (volts.length === 0) return 1;
  const [lower, upper] = [windowOf(bench.nominal, 'closed'), windowOf(bench.nominal, 'open')].sort(
    (a, b) => a.low - b.low,
  );
  const off = (value: Volts, { low, high }: { low: Volts; high: Volts }): number =>
    Math.max(low - value, value - high) / bench.span;
  return Math.max(off(Math.min(...volts), lower!), off(Math.max(...volts), upper!));
}

/** At least two sure samples each way. */
function goesBothWays(
  events: readonly SeenEvent[],
  { instants, held, heldSound, origin, limit }: Recorded,
): boolean {
  const ways = { up: 0, down: 0 };
  for (const { start, end } of events) {
    let [most, least] = [0, 0];
    for (
      let i = firstAt(instants, start + origin);
      i < instants.length && instants[i]! <= end + origin;
      i++
    ) {
      most = Math.max(most, held[i]! - heldSound[i]!);
      least = Math.min(least, held[i]! - heldSound[i]!);
    }
    if (most > 1.4 * limit) ways.up++;
    if (least < -1.4 * limit) ways.down++;
  }
  return ways.up >= 2 && ways.down >= 2;
}

/** The causes that the recording can decide between. */
function causesOf(
  family: Family | undefined,
  events: readonly SeenEvent[],
  visible: number,
  parts: readonly (readonly Outcome[])[],
  whole: boolean | undefined,
  bothWays: boolean,
): readonly Cause[] | undefined {
  if (!family)
    return whole === false ? ['recording', 'none'] : whole ? ['none'] : ['none', 'recording'];
  const isBreached = parts.slice(1).some((part) => !part.includes('conforms'));
  if (!family.add) return isBreached ? family.causes : undefined;
  if (family.name === 'open crack') return family.causes;
  const sure = events.filter((event) => isSure(event, visible));
  if (family.name === 'slipped rotor' || family.name === 'crack')
    return sure.length > 0 || isBreached ? family.causes : undefined;
  if (family.name === 'interference')
    return bothWays && sure.length >= 4 ? family.causes : undefined;
  if (sure.length < 3) return undefined;
  if (!family.name.startsWith('loose')) return family.causes;
  const places = sure.map(({ from }) => from);
  const isSpread = Math.max(...places) - Math.min(...places) > 0.2;
  return isSpread || sure.some(({ speed }) => speed < 0.01) ? family.causes : undefined;
}

/** From an impact until the plate lies still, as far as recorded. */
function bouncesOf(
  { step, state }: Motion,
  kept: Stretch,
  origin: Seconds,
): { start: Seconds; end: Seconds }[] {
  const found: { start: Seconds; end: Seconds }[] = [];
  let from = -1;
  for (let i = kept.from; i <= kept.to; i++) {
    const isIn = i < kept.to && (state[i]! & bouncing) !== 0;
    if (isIn && from < 0) from = i;
    if (!isIn && from >= 0) {
      found.push({ start: from * step - origin, end: i * step - origin });
      from = -1;
    }
  }
  return found;
}

function factorsOf(set: RecorderSet, samples: number): Record<string, string> {
  const rate = Math.round(1 / set.interval);
  return {
    recorder: rate >= 1000 ? `${rate / 1000} kS/s` : `${rate} S/s`,
    stamps: set.stamps,
    sampling: set.averaged ? 'averaged' : 'picked',
    bits: String(set.bits),
    noise: set.noiseName,
    hum: set.hum > 0 ? `${set.hertz} Hz` : 'none',
    samples: samples < 5e3 ? '< 5 k' : samples < 2e4 ? '< 20 k' : '≥ 20 k',
  };
}
