import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { inParallel } from '../circuit/inParallel.js';
import { InputError } from '../errors.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { restLevelOf } from '../expectation/restLevel.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between, wholeBetween } from '../guard.js';
import type { Seconds, Travel, Volts } from '../units.js';

/** What is to be seen, and how the hand moves. */
export interface SettingWish {
  /** The narrowest worn spot to be seen, a part of the travel, above 0. */
  readonly width: Travel;
  /** How long the hand takes from stop to stop, s, above 0. */
  readonly travelTime: Seconds;
  /** So many samples are wanted in the dropout, 1 to 10⁶; 5 when left out. */
  readonly samples?: number;
}

/** How to set an oscilloscope or a logger. */
export interface Setting {
  /** How long the spot keeps the contact open at that speed, s, above 0. */
  readonly dropout: Seconds;
  /** The longest interval between samples, s. */
  readonly interval: Seconds;
  /** Time per division of ten, in steps of 1, 2 and 5, that shows one stroke with a quarter to spare, s. */
  readonly timePerDivision: Seconds;
  /** Samples that a record of ten divisions needs, 1 or more. */
  readonly memory: number;
  /** Volts per division of eight, in steps of 1, 2 and 5, that hold the whole signal and the rest level, V. */
  readonly voltsPerDivision: Volts;
  /**
   * What stops on a dropout: a level that the sound signal never crosses, or, where the rest level lies among the sound readings, a pulse shorter than
   * the shortest sound one.
   */
  readonly trigger:
    | { readonly kind: 'level'; readonly volts: Volts; readonly slope: 'falling' | 'rising' }
    | { readonly kind: 'pulse'; readonly shorterThan: Seconds };
  /** ×10 where the megohm of a ×1 probe would change a reading by more than half a percent of the span. */
  readonly probe: 1 | 10;
}

/** A signal that moves by less than this is none, V. */
const leastSwing = 1e-9;

const wishRules: FieldRules = {
  width: between(1e-6, 1),
  travelTime: between(1e-6, 1e6, 's'),
  'samples?': wholeBetween(1, 1e6),
};

const divisions = { across: 10, up: 8 };
/** The input resistance of an oscilloscope with a ×1 probe, Ω; common practice. */
const direct = 1e6;
/** A ×1 probe may change a reading by this part of the span. */
const tolerated = 0.005;

/**
 * How to set an oscilloscope or a logger so that a worn spot surely shows while the hand sweeps: the interval leaves the wanted samples in the dropout,
 * the record holds a stroke, the range holds sound readings and rest level, and the trigger tells the two apart.
 *
 * @param circuit The hook-up without the instrument.
 * @throws InputError for a wrong circuit or wish.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 }, load: { pullDown: 1e6 } };
 * const setting = chooseSetting(circuit, { width: 0.01, travelTime: 2 });
 * setting.interval.toFixed(4) // => '0.0040'
 * setting.timePerDivision // => 0.5
 * setting.memory // => 1251
 * setting.trigger.kind // => 'level'
 */
export function chooseSetting(circuit: Circuit, wish: SettingWish): Setting {
  checkCircuit(circuit);
  checkFields(wish, 'wish', wishRules);
  const { width, travelTime, samples = 5 } = wish;
  const dropout = width * travelTime;
  const interval = dropout / samples;
  const timePerDivision = nextOf125((1.25 * travelTime) / divisions.across);
  const output = outputFunction(circuit);
  const ends = [0, 1].map((travel) => output(positionAt(circuit.sensor, travel)));
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const rest = restLevelOf(circuit);
  const swing = Math.max(high, rest ?? 0, 0) - Math.min(low, rest ?? 0, 0);
  if (swing < leastSwing) {
    throw new InputError(
      'no-span',
      'circuit',
      'The signal stays at 0 V at both stops and with the wiper lifted; give a circuit that feeds the sensor.',
    );
  }
  return {
    dropout,
    interval,
    timePerDivision,
    memory: Math.ceil((divisions.across * timePerDivision) / interval) + 1,
    voltsPerDivision: nextOf125((1.1 * swing) / divisions.up),
    trigger: triggerFor(low, high, rest, travelTime),
    probe: loadingOf(circuit) > tolerated * (high - low) ? 10 : 1,
  };
}

function triggerFor(
  low: Volts,
  high: Volts,
  rest: Volts | undefined,
  travelTime: Seconds,
): Setting['trigger'] {
  if (rest !== undefined && rest < low) {
    return { kind: 'level', volts: (rest + low) / 2, slope: 'falling' };
  }
  if (rest !== undefined && rest > high) {
    return { kind: 'level', volts: (rest + high) / 2, slope: 'rising' };
  }
  // A hand stays on either side of the middle for no less than a tenth of a stroke.
  return { kind: 'pulse', shorterThan: travelTime / 10 };
}

/** By how much a ×1 probe changes the reading where the sensor's source resistance is largest, V. */
function loadingOf(circuit: Circuit): Volts {
  const { load } = circuit;
  const bare = outputFunction(circuit);
  const loaded = outputFunction({
    ...circuit,
    load: { ...load, pullDown: inParallel(load.pullDown, direct) },
  });
  const places = Array.from({ length: 21 }, (_, i) => positionAt(circuit.sensor, i / 20));
  return Math.max(...places.map((position) => Math.abs(loaded(position) - bare(position))));
}

/** The next of 1, 2 and 5 times a power of ten. */
function nextOf125(value: number): number {
  const power = Math.floor(Math.log10(value));
  const found = [1, 2, 5, 10].find((one) => Number(`${one}e${power}`) >= value * (1 - 1e-12));
  return Number(`${found}e${power}`);
}
