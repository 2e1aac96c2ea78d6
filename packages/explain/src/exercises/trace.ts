import {
  type Circuit,
  positionAt,
  type SimulatedEvent,
  type SimulatedFault,
  type SimulatedMovement,
  type SimulatedSweep,
  simulateSweep,
  type Travel,
  type Volts,
} from '@truesweep/core';
import { workingRules as rules, traceExerciseWords as words } from '@truesweep/wording/working';
import { outputAt } from '../circuit/outputAt.js';
import { difference, quotient } from '../expression.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { given } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, DrawnSweep, ExerciseLevel, ExercisePart } from './exercise.js';
import { choicePart, quantityPart } from './parts.js';
import { drawnFault, type FaultKind, faultKinds, type Passage } from './traceFault.js';

/** What is drawn of a recording, apart from its fault; V and fractions of the travel. */
interface Manner {
  /** How often the throttle is opened and closed again. */
  readonly rounds: number;
  readonly noise: Volts;
  readonly hum: Volts;
  readonly unevenness: Travel;
}

const manners: Readonly<Record<ExerciseLevel, Manner>> = {
  easy: { rounds: 2, noise: 0.002, hum: 0, unevenness: 0.005 },
  medium: { rounds: 3, noise: 0.004, hum: 0, unevenness: 0.01 },
  hard: { rounds: 3, noise: 0.006, hum: 0.008, unevenness: 0.015 },
};

/** Time between samples, s. */
const interval = 0.002;
/** A travel is read off a drawing within this. */
const readOff: Travel = 0.03;
/** A departure that nobody overlooks, a fraction of the span. */
const plainDepth = 0.05;
/** So often a fault must show. */
const leastTimes = 3;
/** A spike that ends above this, V, is none toward 0 V. */
const leastAbove: Volts = 0.3;
/** Departures of no one place lie so far from one another, and so far apart in all. */
const leastApart: Travel = 0.06;
const leastSpread: Travel = 0.3;

/** A recording with what is known of it. */
export interface DrawnRecording {
  readonly circuit: Circuit;
  readonly fault: SimulatedFault;
  /** Where the fault lies, 0 closed to 1 open; none of one that lies in time. */
  readonly travel?: Travel;
  readonly passes: readonly Passage[];
  readonly simulated: SimulatedSweep;
}

/** A recording of a fault, plain or not. */
export function drawnRecording(draw: Draws, level: ExerciseLevel): DrawnRecording {
  const manner = manners[level];
  const circuit = drawnCircuit(draw);
  const { movements, passes } = drawnMovement(draw, manner, level === 'hard');
  const drawn = drawnFault(draw, level, passes);
  const simulated = simulateSweep({
    circuit,
    movements,
    faults: [drawn.fault],
    recorder: {
      interval,
      noise: manner.noise,
      resolution: 0.001,
      ...(manner.hum > 0 && { hum: { volts: manner.hum, hertz: 50 } }),
    },
    seed: Math.floor(draw.uniform() * 2 ** 32),
  });
  return { circuit, passes, simulated, ...drawn };
}

/** A drawn sweep: what is wrong, where it lies, and on how many passes it shows. */
export function trace(draw: Draws, level: ExerciseLevel): Draft | undefined {
  const { circuit, fault, travel, passes, simulated } = drawnRecording(draw, level);
  const { events } = simulated;
  const least = plainDepth * (readingAt(circuit, 1) - readingAt(circuit, 0));
  if (events.some(({ depth }) => depth < least)) return undefined;
  const shown = passesWith(events, passes);
  // Fewer could be chance: of two at one travel and of two far apart nobody can say where they come from.
  if ((travel === undefined ? events.length : shown) < leastTimes) return undefined;
  if (travel === undefined && !areScattered(events)) return undefined;
  if (fault.kind === 'interference' && events.some((one) => looksLifted(one, circuit)))
    return undefined;
  return {
    question: words.question({
      source: given(circuit.source.volts, 'V'),
      limiter: given(circuit.limiter, 'Ω'),
      track: given(circuit.sensor.track, 'Ω'),
      load: given(circuit.load.pullDown!, 'Ω'),
      snaps: level === 'hard',
    }),
    hint: words.hint,
    parts: [
      faultPart(fault.kind),
      ...(travel === undefined
        ? [countPart(events, passes)]
        : [
            travelPart(circuit, travel),
            passesPart(shown, passes.length, fault.kind !== 'shifted-track'),
          ]),
    ],
    working: () =>
      travel === undefined
        ? spreadWorking(circuit, events, fault.kind)
        : travelWorking(circuit, travel, fault.kind),
    sweep: drawnSweep(simulated),
    circuit,
  };
}

function drawnCircuit(draw: Draws): Circuit {
  return {
    source: { volts: 5 },
    limiter: draw.ohms('E12', 470, 1500),
    sensor: {
      track: draw.ohms('E12', 2200, 10_000),
      closedPosition: draw.stepped(0.08, 0.15, 0.01),
      openPosition: draw.stepped(0.85, 0.92, 0.01),
    },
    load: { pullDown: draw.one([1e6, 10e6]) },
  };
}

/** Opens and closes by hand with rests between; at the end it may be let go from a travel below any fault. */
function drawnMovement(draw: Draws, { rounds, unevenness }: Manner, snaps: boolean) {
  const movements: SimulatedMovement[] = [];
  const passes: Passage[] = [];
  let time = 0;
  const add = (movement: SimulatedMovement): void => {
    movements.push(movement);
    time += movement.seconds;
  };
  const rest = { kind: 'hold', seconds: 0.3 } as const;
  add(rest);
  for (let i = 0; i < 2 * rounds; i++) {
    const start = time;
    add({ kind: 'turn', to: 1 - (i % 2), seconds: draw.stepped(0.8, 1.2, 0.1), unevenness });
    passes.push({ start, end: time });
    add(rest);
  }
  if (snaps) {
    add({ kind: 'turn', to: 0.1, seconds: 0.4 });
    add(rest);
    add({ kind: 'snap', seconds: 0.03, restitution: 0.35 });
    add(rest);
  }
  return { movements, passes };
}

/** On how many passes a fault shows; one that lasts from an opening to the closing after it shows on both. */
function passesWith(events: readonly SimulatedEvent[], passes: readonly Passage[]): number {
  const times = events.flatMap(({ start, end }) => [start, end]);
  return passes.filter((pass) => times.some((time) => isWithin(pass, time))).length;
}

const isWithin = ({ start, end }: Passage, time: number): boolean => time >= start && time < end;

const readingAt = (circuit: Circuit, travel: Travel): Volts =>
  outputAt(circuit, positionAt(circuit.sensor, travel));

/** Whether nobody could take the places of departures for one place. */
function areScattered(events: readonly SimulatedEvent[]): boolean {
  const travels = events.map(({ travel }) => travel).sort((a, b) => a - b);
  const areApart = travels.every((at, i) => i === 0 || at - travels[i - 1]! >= leastApart);
  return areApart && travels.at(-1)! - travels[0]! >= leastSpread;
}

/** Whether a spike down ends so near 0 V that it could be a lifted wiper. */
function looksLifted({ travel, depth }: SimulatedEvent, circuit: Circuit): boolean {
  return readingAt(circuit, travel) - depth < leastAbove;
}

function extremes(events: readonly SimulatedEvent[]): readonly [Travel, Travel] {
  const travels = events.map(({ travel }) => travel);
  return [Math.min(...travels), Math.max(...travels)];
}

function faultPart(right: FaultKind): ExercisePart {
  return choicePart(
    { id: 'fault', asks: words.asksFault, right },
    faultKinds.map((id) => ({
      id,
      text: words.faults[id],
      mistake: words.notThat(words.looks[id]),
    })),
  );
}

function travelPart(circuit: Circuit, travel: Travel): ExercisePart | undefined {
  const volts = readingAt(circuit, travel);
  return quantityPart(
    { id: 'travel', asks: words.asksTravel, unit: '%', value: travel },
    [
      [1 - travel, words.mistakes.fromOpen],
      [volts / circuit.source.volts, words.mistakes.ofSource],
      [volts / readingAt(circuit, 1), words.mistakes.ofOpen],
    ],
    { extra: readOff, least: 1 },
  );
}

/** @param isPast Whether the signal leaves its path and comes back on one pass. */
function passesPart(shown: number, all: number, isPast: boolean): ExercisePart | undefined {
  return quantityPart(
    { id: 'passes', asks: words.asksPasses, unit: '1', value: shown },
    [
      [all, words.mistakes.allPasses],
      [all / 2, words.mistakes.rounds],
      [shown / 2, words.mistakes.rounds],
      ...(isPast ? ([[2 * shown, words.mistakes.bothEdges]] as const) : []),
    ],
    { least: 1 },
  );
}

function countPart(events: readonly SimulatedEvent[], passes: readonly Passage[]) {
  const moving = events.filter(({ start }) => passes.some((pass) => isWithin(pass, start)));
  return quantityPart(
    { id: 'count', asks: words.asksCount, unit: '1', value: events.length },
    [
      [moving.length, words.mistakes.movingOnly],
      [passes.length, words.mistakes.countedPasses],
      [2 * events.length, words.mistakes.bothEdges],
    ],
    { least: 1 },
  );
}

/** As one reads it off a drawing, V. */
const readVolts = (circuit: Circuit, travel: Travel): Volts =>
  Number(readingAt(circuit, travel).toFixed(3));

function travelWorking(circuit: Circuit, travel: Travel, kind: FaultKind): Working {
  return workOut(words.titleTravel, (sheet) => {
    const found = travelsOn(sheet, circuit);
    found('t', 'V', travel);
    return { conclusion: words.seen[kind] };
  });
}

function spreadWorking(
  circuit: Circuit,
  events: readonly SimulatedEvent[],
  kind: FaultKind,
): Working {
  return workOut(words.titleSpread, (sheet) => {
    const found = travelsOn(sheet, circuit);
    const [low, high] = extremes(events);
    found('t_1', 'V_1', low);
    found('t_2', 'V_2', high);
    sheet.find({
      symbol: 'Δt',
      meaning: words.finds.Δt,
      unit: '%',
      formula: difference('t_2', 't_1'),
      rule: rules.difference,
    });
    return { conclusion: words.seen[kind] };
  });
}

/** Gives the readings at the stops; works the travel of a reading out between them. */
function travelsOn({ give, find }: Sheet, circuit: Circuit) {
  const stop = (symbol: 'V_c' | 'V_o', travel: Travel) =>
    give({ symbol, meaning: words.finds[symbol], value: readVolts(circuit, travel), unit: 'V' });
  const [closed, open] = [stop('V_c', 0), stop('V_o', 1)];
  return (symbol: 't' | 't_1' | 't_2', volts: 'V' | 'V_1' | 'V_2', travel: Travel): void => {
    give({
      symbol: volts,
      meaning: words.finds[volts],
      value: readVolts(circuit, travel),
      unit: 'V',
    });
    find({
      symbol,
      meaning: words.finds[symbol],
      unit: '%',
      formula: quotient(difference(volts, closed), difference(open, closed)),
      rule: rules.straightLine,
    });
  };
}

/** Plain lists, without the figures that binary steps leave behind. */
function drawnSweep({ sweep }: SimulatedSweep): DrawnSweep {
  const plain = (values: ArrayLike<number>): readonly number[] =>
    Array.from(values, (value) => Number(value.toFixed(3)));
  return { time: plain(sweep.time), signal: plain(sweep.signal) };
}
