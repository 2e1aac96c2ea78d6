import type { Finding, Stretch, Travel, Volts } from '@truesweep/core';
import { type RandomStream, randomStream } from '../simulator/randomStream.js';
import type { WorldCase, WorldEvent } from '../worlds/worldCase.js';
import { adequacy } from './adequacy.js';
import { type Bench, drawBench } from './bench.js';
import { type Evidence, fairCauses, fairVerdicts } from './fairVerdicts.js';
import {
  type FaultName,
  families,
  faultNames,
  type Passage,
  playFault,
  type World,
} from './faults.js';
import { drawMotion, type Habit, habits, type Motion, travelOver } from './motion.js';
import { drawRecorder, type HabitRecorder, type Recorded, record } from './recorder.js';

/** Habits that let the throttle fall, or bring it back often. */
const falling: readonly Habit[] = ['plain', 'short', 'caught', 'mixed', 'only snaps', 'thrown'];
const returning: readonly Habit[] = ['plain', 'short', 'mixed', 'caught', 'thrown', 'slid'];

function drawHabit(fault: FaultName | undefined, random: RandomStream): Habit {
  if (fault === 'snap dropout') return random.pick(falling);
  if (fault === 'sticky') return random.pick(returning);
  return random.pick(habits);
}

/** What was recorded of the movement: a window of the grid, and each place's segment. */
interface Played {
  readonly motion: Motion;
  readonly travel: Float64Array;
  readonly segment: Uint16Array;
  /** Grid places left out before the recording began. */
  readonly begin: number;
}

/** Recordings begin and end anywhere, also in mid stroke or within a rebound. */
function playMotion(motion: Motion, step: number, isCut: boolean, random: RandomStream): Played {
  const whole = travelOver(motion, step);
  const count = whole.travel.length;
  if (!isCut) return { motion, ...whole, begin: 0 };
  const moving = motion.segments.filter(({ kind }) => kind !== 'rest' && kind !== 'held');
  const within = (part: typeof moving): number => {
    if (part.length === 0) return 0;
    const { start, seconds } = random.pick(part);
    return Math.floor((start + random.between(0.2, 0.8) * seconds) / step);
  };
  const begin = within(moving.filter(({ start }) => start < 0.25 * motion.total));
  const end = within(moving.filter(({ start }) => start > 0.75 * motion.total)) || count;
  const to = Math.min(count, Math.max(end, begin + 100));
  return {
    motion,
    travel: whole.travel.slice(begin, to),
    segment: whole.segment.slice(begin, to),
    begin,
  };
}

/** The wiper follows its shaft with some play, and not always in a straight line. */
function shareOf(travel: Float64Array, { hysteresis, shape }: Bench): Float64Array {
  const half = hysteresis / 2;
  let wiper = travel[0]! + half;
  return travel.map((shaft) => {
    wiper = Math.min(shaft + half, Math.max(shaft - half, wiper));
    return shape(wiper);
  });
}

/** Runs of the grid for which something holds, of at least so many places. */
function runs(count: number, least: number, holds: (i: number) => boolean): [number, number][] {
  const found: [number, number][] = [];
  for (let i = 0, from = -1; i <= count; i++) {
    const isIn = i < count && holds(i);
    if (isIn && from < 0) from = i;
    if (isIn || from < 0) continue;
    if (i - from >= least) found.push([from, i - 1]);
    from = -1;
  }
  return found;
}

/** The middle one of some readings of a run. */
function levelOf(volts: Float64Array, [from, to]: readonly [number, number]): Volts {
  const some = Array.from(
    { length: 25 },
    (_, k) => volts[from + Math.floor(((to - from) * (k + 0.5)) / 25)]!,
  );
  return some.sort((a, b) => a - b)[12]!;
}

/** The passages that left anything in the rows. */
function eventsOf(
  passages: readonly Passage[],
  recorded: Recorded,
  share: Float64Array,
  world: World,
): (WorldEvent & { rows: number })[] {
  const { first, last, departure, stamp, visible } = recorded;
  const events: (WorldEvent & { rows: number })[] = [];
  for (const { kinds, from, to } of passages) {
    let row = firstAtLeast(last, from);
    const rows: number[] = [];
    for (; row < first.length && first[row]! <= to; row++) rows.push(row);
    const most = rows.reduce((now, at) => Math.max(now, departure[at]!), 0);
    if (most < 0.05 * visible) continue;
    const touched = rows.filter((at) => departure[at]! > 0.2 * most);
    const shown = rows.filter((at) => departure[at]! > 0.8 * visible).length;
    const [a, b] = [Math.max(0, from - 1), Math.min(share.length - 1, to + 1)];
    const more: Finding['kind'][] = shown <= 1 ? ['spike', 'dropout'] : [];
    const [low, high] = extremes(share, from, to);
    events.push({
      kinds: [...new Set([...kinds, ...more])],
      start: stamp[touched[0]!]!,
      end: stamp[touched.at(-1)!]!,
      from: low,
      to: high,
      ratio: most / visible,
      fast: world.isFast(from) || world.isFast(to),
      speed: Math.abs(share[b]! - share[a]!) / ((b - a) * world.step),
      rows: shown,
    });
  }
  return events;
}

/** Free falls from high up with rebounds of 3 % or more, after a time. */
function countFalls({ segments }: Motion, after: number): number {
  return segments.filter(({ kind, seconds, at, start }, i) => {
    if (kind !== 'fall' || at(0) - at(seconds) < 0.5 || seconds > 0.2 || start < after)
      return false;
    const next = segments[i + 1];
    if (next?.kind !== 'bounce') return false;
    return [...Array(40).keys()].some((k) => next.at((k / 40) * next.seconds) > at(seconds) + 0.03);
  }).length;
}

function firstAtLeast(sorted: Int32Array, value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

function extremes(values: Float64Array, from: number, to: number): [Travel, Travel] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = from; i <= to; i++) {
    low = Math.min(low, values[i]!);
    high = Math.max(high, values[i]!);
  }
  return [low, high];
}

/** The smallest visible departure before anything was recorded, V. */
function guessedVisible({ noise, resolution, hum, form }: HabitRecorder, span: Volts): Volts {
  const left = form.kind === 'moving average' ? 1 / Math.sqrt(form.rows) : 1;
  return Math.max(
    5.2 * Math.hypot(noise * left, resolution / 3.46),
    3 * resolution,
    0.015 * span,
    2.5 * hum * left,
  );
}

/**
 * A recording of a throttle in the hands of people, by recorders and exports of every kind. Sound sensors have even seeds,
 * faulty ones odd ones.
 */
export function playHabit(seed: number): WorldCase {
  const random = randomStream(Math.imul(seed + 311, 0x2545f491) ^ 0x1b873593);
  const fault = seed % 2 === 0 ? undefined : faultNames[(seed >> 1) % faultNames.length]!;
  const habit = drawHabit(fault, random);
  const idle = habit === 'idle screw' ? random.between(0.005, 0.015) : 0;
  const sticky = fault === 'sticky' ? random.between(0.04, 0.15) : 0;
  const off = (): number => random.pick([-1, 1]) * random.logBetween(0.04, 0.3);
  const bench = drawBench({
    above: idle + 0.01,
    closedOff: fault === 'closed end' ? off() : 0,
    openOff: fault === 'open end' ? off() : 0,
    mirrored: fault === 'mirrored exchange',
    random,
  });
  const { span, source } = bench;
  const readings = [bench.output(bench.place(0)), bench.output(bench.place(1))];
  const clipsAt =
    Math.min(...readings) + random.between(0.3, 0.93) * Math.abs(readings[1]! - readings[0]!);
  const recorder = drawRecorder(source, span, fault === 'clipped' ? clipsAt : undefined, random);
  const { step } = recorder;
  const motion = drawMotion(habit, { most: recorder.most, sticky, idle }, random);
  const isCut =
    habit === 'cut' || (habit !== 'one stroke' && habit !== 'only snaps' && random.chance(0.15));
  const played = playMotion(motion, step, isCut, random);
  const { travel, segment, begin } = played;
  const kindAt = (i: number) => motion.segments[segment[i]!]!.kind;
  const share = shareOf(travel, bench);
  const sound = share.map((now) => bench.output(bench.place(now)));
  const world: World = {
    bench,
    share,
    sound,
    step,
    isFast: (i) => kindAt(i) === 'fall' || kindAt(i) === 'bounce',
    isResting: (i) => kindAt(i) === 'rest',
  };
  const depth = Math.min(
    0.9 * span,
    random.logBetween(fault === 'crack' ? 2 : 0.7, fault === 'crack' ? 50 : 40) *
      guessedVisible(recorder, span),
  );
  const faulty = fault ? playFault(fault, world, depth, random) : { volts: sound, passages: [] };
  // The source drifts a little by itself.
  const drift = random.chance(0.2) ? random.between(0.001, 0.006) : 0;
  const pulse = random.between(0.2, 2);
  const left = (i: number): number => 1 - drift * (0.5 + 0.5 * Math.sin(pulse * i * step));
  const drifted = (volts: Float64Array): Float64Array =>
    drift > 0 ? volts.map((v, i) => v * left(i)) : volts;
  const soundVolts = drifted(sound);
  const volts = faulty.volts === sound ? soundVolts : drifted(faulty.volts);
  const supplyShown = random.chance(fault === 'sag' ? 0.5 : 0.12);
  const supply = supplyShown
    ? travel.map((_, i) => bench.supply * left(i) * (faulty.supply?.[i] ?? 1))
    : undefined;
  const isRecorded = (i: number): boolean =>
    motion.segments[segment[Math.min(i, segment.length - 1)]!]!.unrecorded !== true;
  const recorded = record(recorder, volts, soundVolts, isRecorded, supply, span, random);
  const { visible, stamp } = recorded;
  const least = Math.ceil(0.05 / step);
  const closedRuns = runs(
    travel.length,
    least,
    (i) => (travel[i]! < 0.25 && kindAt(i) === 'rest') || travel[i]! <= 0.008,
  );
  const openRuns = runs(travel.length, least, (i) => travel[i]! >= 0.995 && isRecorded(i));
  const wayOf = (from: number): 'fall' | 'hand' =>
    motion.landings.findLast(({ time }) => time <= (begin + from) * step + 0.3)?.way ?? 'hand';
  const all = eventsOf(faulty.passages, recorded, share, world);
  // What the supply shows is explained: it need not be found.
  const events = fault === 'sag' && supplyShown ? all.map((one) => ({ ...one, ratio: 0 })) : all;
  const { adequate, doubtful } = adequacy({
    recorder,
    recorded,
    travel,
    bounds: { closedRuns, openRuns },
    visible: visible / span,
    step,
    isRecorded,
    outputs: volts,
    expected: bench.expected,
    isMoving: (i) => kindAt(i) !== 'rest' && kindAt(i) !== 'held',
  });
  const evidence: Evidence = {
    fault,
    adequate: fault === 'clipped' && recorded.clipped ? false : adequate,
    closed: closedRuns.map((run) => ({ volts: levelOf(volts, run), way: wayOf(run[0]) })),
    open: openRuns.map((run) => levelOf(volts, run)),
    expected: bench.expected,
    told: recorder.told,
    span,
    noise: recorded.noise,
    resolution: recorder.resolution,
    high: recorder.high,
    events,
    falls: countFalls(motion, begin * step),
    shortStrokes:
      habit === 'partial' ? motion.segments.filter(({ kind }) => kind === 'held').length : 0,
    clipped: recorded.clipped,
    supplyShown,
    doubtful,
  };
  const verdicts = fairVerdicts(evidence);
  const causes = fairCauses(evidence, verdicts);
  const stampAt = (seconds: number): number => {
    const row = firstAtLeast(recorded.last, Math.round(seconds / step) - begin);
    return stamp[Math.min(row, stamp.length - 1)]!;
  };
  const seconds = travel.length * step;
  const inside = motion.segments.filter(
    ({ start, seconds: length }) => start + length > begin * step && start < begin * step + seconds,
  );
  const stretches = inside.flatMap(({ note, start, seconds: length }): Stretch[] =>
    note ? [{ kind: note, start: stampAt(start), end: stampAt(start + length) }] : [],
  );
  return {
    seed,
    family: fault ?? `sound, ${habit}`,
    factors: {
      habit,
      cut: isCut ? 'yes' : 'no',
      recorder: recorder.name,
      forms: recorder.integrates ? 'averaged' : 'picked',
      export: recorder.form.kind,
      stamps: recorder.stamps,
      loss: recorder.loss,
      bits: recorder.bits,
      noise: recorder.noiseName,
      colour: recorder.colour,
      hum: recorder.hum > 0 ? 'yes' : 'no',
      shape: bench.shapeName,
      hysteresis: bench.hysteresis > 0 ? 'yes' : 'no',
      load: bench.load,
      sense: bench.rising ? 'rising' : 'falling',
      supply: supplyShown ? 'recorded' : 'no',
      fall: motion.fall < 0.05 ? '< 50 ms' : '≥ 50 ms',
      kind: fault ? families[fault] : 'sound',
    },
    sound: fault === undefined,
    ...(evidence.adequate !== undefined && { adequate: evidence.adequate }),
    expected: bench.expected,
    told: recorder.told,
    sweep: { ...recorded.sweep, ...(stretches.length > 0 && random.chance(0.7) && { stretches }) },
    verdicts,
    ...(causes && { causes }),
    events: events.map(({ rows: _, ...event }) => event),
    bounces: inside
      .filter(({ kind }) => kind === 'bounce')
      .map(({ start, seconds: length }) => ({
        start: stampAt(start),
        end: stampAt(start + length),
      })),
    visible: visible / span,
  };
}
