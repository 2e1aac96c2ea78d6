import type { Circuit, Travel, Volts } from '@truesweep/core';
import { durationOf } from '../simulator/motion.js';
import { outputOf, outputTable } from '../simulator/outputTable.js';
import type { CorpusPlan, Fault, RecorderPlan } from '../simulator/plan.js';
import { type RandomStream, randomStream } from '../simulator/randomStream.js';
import { trueWindows } from '../trueWindows.js';
import { visibleLimit } from '../visibleLimit.js';
import { drawFault, type FaultName, faultNames } from './drawFault.js';
import { drawHookup, type Hookup } from './drawHookup.js';
import { drawHand, drawMoves, type Manner } from './drawMoves.js';
import { drawRecorder, fastRecorders, type RecorderName, tellRecorder } from './drawRecorder.js';

/** Recordings of sound sensors, the poor ones among them. */
const soundClasses = [
  'sound, by hand',
  'sound, by spring',
  'sound, both ways',
  'sound, pauses',
  'sound, some partial strokes',
  'sound, hum',
  'sound, gaps',
  'sound, slow logger',
  'sound, meter',
  'sound, noisy',
  'sound, only partial strokes',
  'sound, clipped',
] as const;

const faultyClasses = [
  ...faultNames,
  'wrong closed end',
  'wrong open end',
  'sticky return',
  'no output',
  'wrong terminals',
  'two faults',
  'two faults',
  'fault, slow recorder',
] as const;

export type CaseClass = (typeof soundClasses)[number] | (typeof faultyClasses)[number];

/** The class of a seed: sound for even seeds, faulty for odd ones. */
export function classOf(seed: number): CaseClass {
  const at = Math.floor(seed / 2);
  return seed % 2 === 0
    ? soundClasses[at % soundClasses.length]!
    : faultyClasses[at % faultyClasses.length]!;
}

/** The case of a seed as plain data. */
export function drawCase(seed: number): CorpusPlan {
  const className = classOf(seed);
  const random = randomStream(Math.imul(seed, 0x9e3779b1) ^ 0x85ebca6b);
  const hookup = drawHookup(random);
  const extra =
    className === 'two faults' ? random.pick(['none', 'ends', 'sticky'] as const) : 'none';
  const actual = actualCircuit(className, extra, hookup, random);
  const names = recorderNames(className, random);
  const slow = names.every((name) => !fastRecorders.includes(name));
  const [closed, open] = [0, 1].map((stop) => reading(actual, stop));
  const span = Math.abs(open! - closed!);
  const recorder = drawRecorder(
    {
      names,
      top: Math.max(hookup.nominal.source.volts, pulledTo(hookup.nominal)),
      span,
      noisy: className === 'sound, noisy',
      hum: className === 'sound, hum',
      careless: 0.15,
    },
    random,
  );
  const sticky = className === 'sticky return' || extra === 'sticky';
  const stick = sticky
    ? random.logBetween(0.02, 0.18)
    : random.chance(0.5)
      ? random.uniform() * 0.012
      : 0;
  const moves = drawMoves(mannerOf(className, slow, recorder, stick, random), random);
  const duration = durationOf(moves);
  const visible = visibleLimit(recorder, span, duration / recorder.interval);
  const faults = drawFaults(
    className,
    extra,
    { hookup: { ...hookup, actual }, visible, span, duration },
    random,
  );
  const set =
    className === 'sound, clipped' ? clippedRange(recorder, closed!, open!, random) : recorder;
  const gaps = className === 'sound, gaps' || random.chance(0.05) ? drawGaps(duration, random) : [];
  return {
    seed,
    className,
    nominal: hookup.nominal,
    actual,
    tolerances: hookup.tolerances,
    cable: random.logBetween(50e-12, 500e-12),
    hand: drawHand(random),
    moves,
    faults,
    recorder: { ...set, gaps },
    told: tellRecorder(set, random),
  };
}

function reading(circuit: Circuit, travel: Travel): Volts {
  const { closedPosition = 0, openPosition = 1 } = circuit.sensor;
  return outputOf(circuit, travel === 0 ? closedPosition : openPosition);
}

function pulledTo({ load }: Circuit): Volts {
  return load.pullUp && 'volts' in load.pullUp ? load.pullUp.volts : 0;
}

function recorderNames(className: CaseClass, random: RandomStream): readonly RecorderName[] {
  if (className === 'sound, slow logger') return ['slow logger'];
  if (className === 'sound, meter') return ['meter'];
  if (className === 'fault, slow recorder') return ['slow logger', 'meter'];
  const mayBeSlow = [
    'wrong closed end',
    'wrong open end',
    'sticky return',
    'no output',
    'wrong terminals',
  ];
  if (mayBeSlow.includes(className) && random.chance(0.25)) return ['slow logger', 'meter'];
  return fastRecorders;
}

function mannerOf(
  className: CaseClass,
  slow: boolean,
  { interval }: RecorderPlan,
  stick: Travel,
  random: RandomStream,
): Manner {
  const returns =
    className === 'sound, by hand'
      ? 'hand'
      : className === 'sound, by spring'
        ? 'spring'
        : className === 'sound, both ways'
          ? 'mixed'
          : random.pick(['hand', 'hand', 'spring', 'spring', 'mixed'] as const);
  const partial =
    className === 'sound, only partial strokes'
      ? 'only'
      : className === 'sound, some partial strokes' || random.chance(0.1)
        ? 'some'
        : 'none';
  return {
    returns,
    partial,
    pauses: className === 'sound, pauses' || random.chance(0.15),
    strokeSeconds: slow ? [2, 6] : [0.6, 3],
    restSeconds: slow ? [Math.max(0.6, 6 * interval), Math.max(1.2, 10 * interval)] : [0.25, 0.7],
    stick,
  };
}

function actualCircuit(
  className: CaseClass,
  extra: 'none' | 'ends' | 'sticky',
  hookup: Hookup,
  random: RandomStream,
): Circuit {
  if (className === 'wrong closed end') return misset(hookup, 'closed', random);
  if (className === 'wrong open end') return misset(hookup, 'open', random);
  if (extra === 'ends') return misset(hookup, random.pick(['closed', 'open']), random);
  if (className !== 'wrong terminals') return hookup.actual;
  const connection = random.pick([
    { supply: 'bottom', ground: 'top', signal: 'wiper' },
    { supply: 'wiper', ground: 'bottom', signal: 'top' },
    { supply: 'top', ground: 'wiper', signal: 'bottom' },
    { supply: 'wiper', ground: 'top', signal: 'bottom' },
    { supply: 'bottom', ground: 'wiper', signal: 'top' },
  ] as const);
  const limiter = Math.max(hookup.actual.limiter, 100);
  return { ...hookup.actual, limiter, connection };
}

/** Moves one stop's place so that its reading lies outside its window by some share of the span. */
function misset(
  { nominal, actual, tolerances }: Hookup,
  end: 'closed' | 'open',
  random: RandomStream,
): Circuit {
  const windows = trueWindows(nominal, tolerances);
  const span = Math.abs(windows.open.nominal - windows.closed.nominal);
  const excess = random.logBetween(0.006, 0.14) * span;
  const output = outputTable(actual);
  const { low, high } = windows[end];
  const wished = random.chance(0.5) ? [low - excess, high + excess] : [high + excess, low - excess];
  for (const volts of wished) {
    const place = placeOf(output, volts);
    if (place === undefined) continue;
    const name = end === 'closed' ? 'closedPosition' : 'openPosition';
    return { ...actual, sensor: { ...actual.sensor, [name]: place } };
  }
  return actual;
}

/** The place on the track with an output, by bisection; none where no place has it. */
function placeOf(output: (at: number) => Volts, volts: Volts): number | undefined {
  let [low, high] = [0.005, 0.995];
  if (volts <= output(low) || volts >= output(high)) return undefined;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (output(middle) < volts) low = middle;
    else high = middle;
  }
  return low;
}

function drawFaults(
  className: CaseClass,
  extra: 'none' | 'ends' | 'sticky',
  place: Parameters<typeof drawFault>[1],
  random: RandomStream,
): readonly Fault[] {
  if (className === 'no output') {
    const { volts } = place.hookup.actual.source;
    return [
      {
        kind: 'no-output',
        volts: random.pick([0, 0, volts, 0.5 * volts, random.uniform() * volts]),
      },
    ];
  }
  const one = (): Fault => drawFault(random.pick(faultNames), place, random);
  if (className === 'fault, slow recorder') return [one()];
  if (className === 'two faults') return extra === 'none' ? [one(), one()] : [one()];
  const name = faultNames.find((it) => it === className) as FaultName | undefined;
  return name ? [drawFault(name, place, random)] : [];
}

/** A range that ends inside the sensor's span. */
function clippedRange(
  recorder: RecorderPlan,
  closed: Volts,
  open: Volts,
  random: RandomStream,
): RecorderPlan {
  const [bottom, top] = [Math.min(closed, open), Math.max(closed, open)];
  const share = random.between(0.05, 0.5);
  const { step } = recorder;
  return random.chance(0.8)
    ? {
        ...recorder,
        high:
          recorder.low + step * Math.floor((top - share * (top - bottom) - recorder.low) / step),
      }
    : {
        ...recorder,
        low:
          recorder.low + step * Math.ceil((bottom + share * (top - bottom) - recorder.low) / step),
      };
}

function drawGaps(duration: number, random: RandomStream): RecorderPlan['gaps'] {
  const large = random.chance(0.5);
  return Array.from({ length: random.whole(1, 6) }, () => ({
    time: random.between(0.1, duration - 0.1),
    seconds: large ? random.between(0.02, 0.5) : random.between(0.002, 0.015),
  }));
}
