import type { Sweep } from '../capture/sweep.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { restLevelOf } from '../expectation/restLevel.js';
import { noMoreThan } from '../noMoreThan.js';
import { type RandomNumbers, randomNumbers } from '../statistics/randomNumbers.js';
import type { Farads, Hertz, Position, Seconds, Travel, Volts } from '../units.js';
import { checkPlan, mostSamples } from './checkPlan.js';
import type { SimulatedFault } from './faults.js';
import { type SimulatedMovement, travelPieces } from './movement.js';

/** The recorder of a simulated sweep. */
export interface SimulatedRecorder {
  /** Time between samples, s, above 0. */
  readonly interval: Seconds;
  /** Standard deviation of the noise, V, 0 or more; 0 when left out. */
  readonly noise?: Volts;
  /** Smallest step of the readings, V, 0 or more; 0 (none) when left out. */
  readonly resolution?: Volts;
  /** Readings beyond this, V from low to high, are held at its edge; none are when left out. */
  readonly range?: { readonly low: Volts; readonly high: Volts };
  /** Pick-up from the mains: amplitude, V, 0 or more, and frequency, Hz, above 0; none when left out. */
  readonly hum?: { readonly volts: Volts; readonly hertz: Hertz };
  /** Capacitance across the load, F, 0 or more: a lifted wiper's signal decays to the load's rest level; 0 when left out. */
  readonly capacitance?: Farads;
}

/** All that a simulated sweep is made from; the same plan gives the same sweep. */
export interface SweepPlan {
  /** The hook-up, with the sensor that is swept. */
  readonly circuit: Circuit;
  /** What the throttle does, one after the other; it begins closed. */
  readonly movements: readonly SimulatedMovement[];
  /** What records it. */
  readonly recorder: SimulatedRecorder;
  /** What is wrong with the sensor and its surroundings; nothing when left out. */
  readonly faults?: readonly SimulatedFault[];
  /** Which noise and which chances: a whole number; the same gives the same sweep. */
  readonly seed: number;
}

/** One passage of one fault, as it stands in the simulated recording. */
export interface SimulatedEvent {
  /** The fault, as the plan has it. */
  readonly fault: SimulatedFault;
  /** When it begins, s. */
  readonly start: Seconds;
  /** When it ends, s. */
  readonly end: Seconds;
  /** Where the throttle stands in the middle of it: travel, 0 to 1. */
  readonly travel: Travel;
  /** Samples that the fault acted on. */
  readonly samples: number;
  /** Largest departure from the sound signal in those samples, before noise and rounding, V. */
  readonly depth: Volts;
}

/** A simulated recording with the truth behind it. */
export interface SimulatedSweep {
  /** What the recorder wrote down. */
  readonly sweep: Sweep;
  /** Travel at each sample. */
  readonly travel: Float64Array;
  /** What a sound sensor would have given at each sample, before noise and rounding, V. */
  readonly sound: Float64Array;
  /** Every passage of every fault, by time. */
  readonly events: readonly SimulatedEvent[];
}

/**
 * Simulates the recording of a sensor on a bench while its throttle is moved.
 *
 * @param plan Circuit, movements (from the closed stop), recorder, faults and a seed.
 * @throws InputError for an impossible circuit or recorder.
 *
 * @example
 * const { sweep } = simulateSweep({
 *   circuit: { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} },
 *   movements: [{ kind: 'turn', to: 1, seconds: 1 }, { kind: 'hold', seconds: 1 }],
 *   recorder: { interval: 0.5 },
 *   seed: 1,
 * });
 * sweep.signal // => Float64Array [0, 2.5, 5, 5, 5]
 */
export function simulateSweep(plan: SweepPlan): SimulatedSweep {
  checkPlan(plan);
  const random = randomNumbers(plan.seed);
  const { time, travel } = moved(plan, random);
  const output = outputTable(plan.circuit);
  const position = travel.map((at) => positionAt(plan.circuit.sensor, at));
  const sound = position.map((at) => output(at, 'touching'));
  const disturbed = Float64Array.from(sound);
  const lifted = new Uint8Array(time.length);
  const passages = (plan.faults ?? []).flatMap((fault) =>
    passagesOf(fault, time, travel, random).map((passage) => {
      applyFault(fault, passage, plan, position, output, disturbed, lifted, random);
      return { fault, ...passage };
    }),
  );
  const restLevel = restLevelOf(plan.circuit) ?? 0;
  letDecay(plan, restLevel, disturbed, lifted);
  const events = passages.map(({ fault, from, to }) =>
    event(fault, from, to, time, travel, sound, disturbed),
  );
  return {
    sweep: { time, signal: recorded(plan, time, disturbed, random) },
    travel,
    sound,
    events,
  };
}

interface Passage {
  readonly from: number;
  readonly to: number;
}

function moved(
  plan: SweepPlan,
  random: RandomNumbers,
): { time: Float64Array; travel: Float64Array } {
  const pieces = travelPieces(plan.movements, random);
  const total = pieces.reduce((sum, piece) => sum + piece.seconds, 0);
  const count = Math.floor(total / plan.recorder.interval + 1e-9) + 1;
  noMoreThan(mostSamples, count, 'plan.recorder.interval', 'samples');
  const time = Float64Array.from({ length: count }, (_, i) => i * plan.recorder.interval);
  let piece = 0;
  let begun = 0;
  const travel = time.map((now) => {
    while (piece < pieces.length - 1 && now >= begun + pieces[piece]!.seconds) {
      begun += pieces[piece]!.seconds;
      piece++;
    }
    return pieces[piece]?.at(now - begun) ?? 0;
  });
  return { time, travel };
}

type Output = (position: Position, contact: Contact) => Volts;
type Contact = 'touching' | number;

/** The output over the track as a table of straight pieces, so fine that its chords err far less than noise. */
function outputTable(circuit: Circuit): Output {
  const pieces = 1024;
  const tables = new Map<Contact, Float64Array>();
  return (position, contact) => {
    let table = tables.get(contact);
    if (!table) {
      const at = contact === 'touching' ? circuit : withContact(circuit, contact);
      const exact = outputFunction(at);
      table = Float64Array.from({ length: pieces + 2 }, (_, i) => exact(Math.min(1, i / pieces)));
      tables.set(contact, table);
    }
    const place = position * pieces;
    const left = Math.floor(place);
    return table[left]! + (table[left + 1]! - table[left]!) * (place - left);
  };
}

function withContact(circuit: Circuit, contact: number): Circuit {
  return { ...circuit, sensor: { ...circuit.sensor, contact } };
}

/** The runs of samples that a fault acts on. */
function passagesOf(
  fault: SimulatedFault,
  time: Float64Array,
  travel: Float64Array,
  random: RandomNumbers,
): readonly Passage[] {
  if (fault.kind === 'loose-connection' || fault.kind === 'interference') {
    return fault.at.flatMap(({ time: start, seconds }) =>
      runs(time, (now) => now >= start && now < start + seconds),
    );
  }
  const [from, to] = stretchOf(fault);
  const all = runs(travel, (at) => at >= from && at <= to);
  if (fault.kind !== 'worn-spot') return all;
  return all.filter(() => random.uniform() < (fault.chance ?? 1));
}

function stretchOf(fault: Exclude<SimulatedFault, { at: unknown }>): readonly [Travel, Travel] {
  switch (fault.kind) {
    case 'worn-spot':
      return [fault.travel - fault.width / 2, fault.travel + fault.width / 2];
    case 'shifted-track':
      return [fault.travel, 2];
    default:
      return [fault.from, fault.to];
  }
}

function runs(values: Float64Array, inside: (value: number) => boolean): Passage[] {
  const found: Passage[] = [];
  for (let i = 0; i < values.length; i++) {
    if (!inside(values[i]!)) continue;
    const from = i;
    while (i < values.length && inside(values[i]!)) i++;
    found.push({ from, to: i });
  }
  return found;
}

function applyFault(
  fault: SimulatedFault,
  { from, to }: Passage,
  plan: SweepPlan,
  position: Float64Array,
  output: Output,
  signal: Float64Array,
  lifted: Uint8Array,
  random: RandomNumbers,
): void {
  const entered = signal[Math.max(0, from - 1)]!;
  for (let i = from; i < to; i++) {
    switch (fault.kind) {
      case 'worn-spot':
        if (fault.ohms === Number.POSITIVE_INFINITY) lifted[i] = 1;
        else signal[i] = output(position[i]!, fault.ohms);
        break;
      case 'loose-connection':
        lifted[i] = 1;
        break;
      case 'interference':
        signal[i]! += fault.at.find(({ time, seconds }) => inSpan(i, plan, time, seconds))!.volts;
        break;
      case 'shifted-track':
        signal[i] = output(Math.min(1, Math.max(0, position[i]! + fault.shift)), 'touching');
        break;
      case 'dead-spot':
        signal[i] = entered;
        break;
      case 'rough-track':
        if (position[i] !== position[i - 1]) signal[i]! += fault.volts * random.normal();
    }
  }
}

function inSpan(sample: number, plan: SweepPlan, start: Seconds, seconds: Seconds): boolean {
  const now = sample * plan.recorder.interval;
  return now >= start && now < start + seconds;
}

/** Where nothing holds the signal it decays to the load's rest level with the load's time constant. */
function letDecay(
  plan: SweepPlan,
  restLevel: Volts,
  signal: Float64Array,
  lifted: Uint8Array,
): void {
  const { pullDown = Number.POSITIVE_INFINITY, pullUp } = plan.circuit.load;
  const conductance = 1 / pullDown + (pullUp ? 1 / pullUp.ohms : 0);
  const constant = (plan.recorder.capacitance ?? 0) / conductance;
  const kept = constant > 0 ? Math.exp(-plan.recorder.interval / constant) : 0;
  for (let i = 0; i < signal.length; i++) {
    if (!lifted[i]) continue;
    const before = signal[Math.max(0, i - 1)]!;
    signal[i] = restLevel + (before - restLevel) * kept;
  }
}

function event(
  fault: SimulatedFault,
  from: number,
  to: number,
  time: Float64Array,
  travel: Float64Array,
  sound: Float64Array,
  disturbed: Float64Array,
): SimulatedEvent {
  let depth = 0;
  let deepest = from;
  for (let i = from; i < to; i++) {
    const departure = Math.abs(disturbed[i]! - sound[i]!);
    if (departure > depth) {
      depth = departure;
      deepest = i;
    }
  }
  return {
    fault,
    start: time[from]!,
    end: time[to - 1]!,
    travel: travel[deepest]!,
    samples: to - from,
    depth,
  };
}

function recorded(
  { recorder }: SweepPlan,
  time: Float64Array,
  signal: Float64Array,
  random: RandomNumbers,
): Float64Array {
  const { noise = 0, resolution = 0, range, hum } = recorder;
  const phase = 2 * Math.PI * random.uniform();
  return signal.map((volts, i) => {
    let reading = volts + noise * random.normal();
    if (hum) reading += hum.volts * Math.sin(2 * Math.PI * hum.hertz * time[i]! + phase);
    if (resolution > 0) reading = Math.round(reading / resolution) * resolution;
    return range ? Math.min(range.high, Math.max(range.low, reading)) : reading;
  });
}
