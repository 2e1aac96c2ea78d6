import { bisection } from '../bisection.js';
import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, type Load, positionAt } from '../circuit/circuit.js';
import { isDetermined } from '../circuit/determined.js';
import { InputError } from '../errors.js';
import { dirtEffect, withDirt } from '../expectation/dirtEffect.js';
import { loadingErrors } from '../expectation/loadingErrors.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { turningPoints } from '../expectation/turningPoints.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { above0, between, positive, resistance } from '../guard.js';
import { preferredValue } from '../quantity/preferredValue.js';
import { type PreferredSeries, seriesNames } from '../quantity/preferredValues.js';
import type { Amps, Fraction, Ohms, Travel, Volts } from '../units.js';
import { worstCase } from './worstCase.js';

/** What the bench load must show and what it may cost. */
export interface BenchLoadWish {
  /** Where the dirt must show, one or more travels, 0 to 1. */
  readonly travels: readonly Travel[];
  /** Resistance of the dirt, Ω; above 0, Infinity for a lifted wiper. */
  readonly dirt: Ohms;
  /** The change of the reading that is seen above the noise, V, above 0. */
  readonly visible: Volts;
  /** Continuous limit of the wiper's current, A, above 0; no limit when left out. */
  readonly wiperCurrent?: Amps;
  /** Largest loading error, as a fraction of the span without any load, 0 to 1; no limit when left out. */
  readonly loadingError?: Fraction;
  /** A voltage of its own for the pull-up, V above the load's common, 0 to 10⁶; from the sensor's supply terminal when left out. */
  readonly pullUpVolts?: Volts;
  /** The series that the load is taken from; `E24` when left out. */
  readonly series?: PreferredSeries;
}

/** One way of loading: the weakest load that does it. */
export interface BenchLoad {
  readonly kind: 'possible';
  /** The largest resistance with which the dirt shows at every travel, Ω. */
  readonly largest: Ohms;
  /** That rounded down to the series: the resistor to take, Ω. */
  readonly ohms: Ohms;
  /** All that hangs on the signal then, recording by recording. */
  readonly loads: readonly Load[];
  /** The change that the dirt makes with it, where it makes the least, V. */
  readonly change: Volts;
  /** Worst current through the wiper's contact over the travel, A; left out where it has no single value. */
  readonly wiperCurrent?: Amps;
  /** Largest loading error, fraction of the span without any load. */
  readonly loadingError: Fraction;
}

/** A way of loading that is not to be had, with the limit that it misses by most. */
export interface NoBenchLoad {
  readonly kind: 'impossible';
  /** The limit that it misses by most. */
  readonly binding: 'visible' | 'wiper-current' | 'loading-error';
  /** The resistance that comes nearest to showing the dirt, or that just shows it, Ω. */
  readonly ohms: Ohms;
  /** What it does, in V, A or as a fraction, by `binding`; left out where it has no single value. */
  readonly value?: number;
  /** What it is held to, in the same unit. */
  readonly limit: number;
}

/** The ways of loading a signal on purpose: one resistor, or one recording with it down and one with it up. */
export type BenchLoadWay = 'pull-down' | 'pull-up' | 'one-with-each';

/** Every way with its resistor or its refusal, and the one to take. */
export type BenchLoadChoice =
  /** The hook-up shows the dirt as it is, at every travel. */
  | {
      readonly kind: 'none-needed';
      /** The smallest change of the reading at these travels, V. */
      readonly change: Volts;
    }
  | {
      readonly kind: 'chosen';
      /** The way with the weakest load of those that need one recording; two recordings only where none of those does it. */
      readonly use: BenchLoadWay;
      /** Every way with its resistor or its refusal. */
      readonly ways: Readonly<Record<BenchLoadWay, BenchLoad | NoBenchLoad>>;
    }
  | {
      readonly kind: 'impossible';
      /** Every way with its resistor or its refusal. */
      readonly ways: Readonly<Record<BenchLoadWay, NoBenchLoad>>;
    };

/** Where a load is looked for, Ω. */
const [strongest, weakest]: readonly [Ohms, Ohms] = [1, 1e9];

/**
 * Chooses the deliberate bench load that makes dirt in the wiper's contact visible at the travels of interest,
 * and keeps the wiper's current and the loading error under their limits: the largest resistance that shows it,
 * from 1 Ω to 1 GΩ, rounded down to a preferred value.
 *
 * Method: over the load's resistance the change rises to a peak and falls again; the border above the peak is
 * bisected. A weaker load carries less current and bends the output less, so where this one is over a limit
 * every other one that shows the dirt is too.
 *
 * @param circuit The hook-up with its instrument, without a pull-up; a pull-down goes beside the instrument's own.
 * @param wish What must show, and the limits.
 * @throws InputError for a wrong circuit or wish, `has-pull-up`, or `no-output` where the output has no single value.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const choice = chooseBenchLoad(circuit, { travels: [0.05], dirt: 10e3, visible: 0.2 });
 * choice.use // => 'pull-up'
 * choice.ways['pull-up'].ohms // => 180000
 * choice.ways['pull-down'].binding // => 'visible'
 */
export function chooseBenchLoad(circuit: Circuit, wish: BenchLoadWish): BenchLoadChoice {
  checkCircuit(circuit);
  checkWish(circuit, wish);
  const own = Math.min(...wish.travels.map((travel) => ownChange(circuit, travel, wish.dirt)));
  if (own >= wish.visible) return { kind: 'none-needed', change: own };
  const down = (ohms: Ohms): Load => {
    const { pullDown = Infinity } = circuit.load;
    return { ...circuit.load, pullDown: 1 / (1 / ohms + 1 / pullDown) };
  };
  const up = (ohms: Ohms): Load => ({
    ...circuit.load,
    pullUp:
      wish.pullUpVolts === undefined ? { ohms, from: 'sensor' } : { ohms, volts: wish.pullUpVolts },
  });
  const ways = {
    'pull-down': benchLoad(circuit, wish, [down]),
    'pull-up': benchLoad(circuit, wish, [up]),
    'one-with-each': benchLoad(circuit, wish, [down, up]),
  };
  let use: BenchLoadWay | undefined;
  let ohms = 0;
  for (const way of ['pull-down', 'pull-up', 'one-with-each'] as const) {
    const load = ways[way];
    if (load.kind === 'impossible' || (use && way === 'one-with-each')) continue;
    if (load.ohms > ohms) [use, ohms] = [way, load.ohms];
  }
  return use
    ? { kind: 'chosen', use, ways }
    : { kind: 'impossible', ways: ways as Record<BenchLoadWay, NoBenchLoad> };
}

const travel = between(0, 1);

const wishRules: FieldRules = {
  travels: listOf(travel, 1, 1000),
  dirt: (value, path) => {
    if (resistance(value, path) === 0) positive(value, path, 'Ω');
  },
  visible: above0('V'),
  'wiperCurrent?': above0('A'),
  'loadingError?': between(0, 1),
  'pullUpVolts?': between(0, 1e6, 'V'),
  'series?': seriesNames,
};

function checkWish(circuit: Circuit, wish: BenchLoadWish): void {
  checkFields(wish, 'wish', wishRules);
  if (!circuit.load.pullUp) return;
  throw new InputError(
    'has-pull-up',
    'circuit.load.pullUp',
    'circuit.load.pullUp is given; a bench load is chosen for a hook-up without a pull-up.',
  );
}

/** The change that is sure to be seen without a bench load. */
function ownChange(circuit: Circuit, travel: Travel, dirt: Ohms): Volts {
  const { dirty } = dirtEffect(circuit, travel, dirt);
  return dirty.kind === 'floating' ? 0 : Math.abs(dirty.volts);
}

/** One way of loading; with two recordings the dirt need show in one of them. */
function benchLoad(
  circuit: Circuit,
  wish: BenchLoadWish,
  recordings: readonly ((ohms: Ohms) => Load)[],
): BenchLoad | NoBenchLoad {
  const change = (ohms: Ohms): Volts => leastChange(circuit, wish, recordings, ohms);
  const { largest, best } = largestVisible(change, wish.visible);
  if (largest === undefined) {
    const [value, limit] = [change(best), wish.visible];
    return { kind: 'impossible', binding: 'visible', ohms: best, value, limit };
  }
  const ohms = preferredValue(largest, wish.series ?? 'E24', 'down');
  const loads = recordings.map((loadOf) => loadOf(ohms));
  const currents = loads.map((load) => worstCase({ ...circuit, load }).wiper.value);
  const wiperCurrent = currents.every(isDetermined) ? Math.max(...currents) : undefined;
  const loadingError = Math.max(...loads.map((load) => loadingErrorOf({ ...circuit, load })));
  const made = change(ohms);
  const missed = [
    { binding: 'visible', value: made, limit: wish.visible, by: wish.visible / made },
    by('wiper-current', wiperCurrent, wish.wiperCurrent),
    by('loading-error', loadingError, wish.loadingError),
  ] as const;
  const worst = missed.reduce((most, one) => (one.by > most.by ? one : most));
  // A load just at its limit keeps it: rounding of the last figures is no miss.
  if (worst.by > 1 + 1e-9) {
    const { binding, value, limit } = worst;
    return { kind: 'impossible', binding, ohms, ...(value !== undefined && { value }), limit };
  }
  return {
    kind: 'possible',
    largest,
    ohms,
    loads,
    change: made,
    ...(wiperCurrent !== undefined && { wiperCurrent }),
    loadingError,
  };
}

/** By what ratio a value is over its limit; without a limit it never is, without a value it always is. */
function by<Name extends string>(binding: Name, value: number | undefined, limit?: number) {
  const ratio = limit === undefined || value === 0 ? 0 : (value ?? Infinity) / limit;
  return { binding, value, limit: limit ?? 0, by: ratio };
}

/** The change that the dirt makes at the travel where it shows least. */
function leastChange(
  circuit: Circuit,
  { travels, dirt }: BenchLoadWish,
  recordings: readonly ((ohms: Ohms) => Load)[],
  ohms: Ohms,
): Volts {
  const changes = recordings.map((loadOf) => {
    const clean = { ...circuit, load: loadOf(ohms) };
    const [before, after] = [outputFunction(clean), outputFunction(withDirt(clean, dirt))];
    return (travel: Travel): Volts => {
      const position = positionAt(circuit.sensor, travel);
      return Math.abs(after(position) - before(position));
    };
  });
  return Math.min(...travels.map((at) => Math.max(...changes.map((changeAt) => changeAt(at)))));
}

/** The largest resistance whose change is visible, and the one whose change is largest. */
function largestVisible(
  change: (ohms: Ohms) => Volts,
  visible: Volts,
): { readonly largest?: Ohms; readonly best: Ohms } {
  const ohmsAt = (part: number): Ohms => strongest * (weakest / strongest) ** part;
  const excess = (part: number): Volts => change(ohmsAt(part)) - visible;
  const parts = [0, ...turningPoints(excess, 0, 1), 1];
  const shows = parts.map((part) => excess(part) >= 0);
  const best = ohmsAt(parts.reduce((most, part) => (excess(part) > excess(most) ? part : most)));
  const last = shows.lastIndexOf(true);
  if (last < 0) return { best };
  const [low] = bisection((part) => excess(part) >= 0, parts[last]!, parts[last + 1] ?? 1, 1e-13);
  return { largest: ohmsAt(low), best };
}

function loadingErrorOf(circuit: Circuit): Fraction {
  const unloaded = outputFunction({ ...circuit, load: {} });
  const [closed, open] = [0, 1].map((travel) => unloaded(positionAt(circuit.sensor, travel)));
  const error = Math.abs(loadingErrors(circuit).fromUnloaded.volts);
  // A sensor that doesn't move has no span: any error is then the whole of it.
  return error === 0 ? 0 : Math.min(error / Math.abs(open! - closed!), Number.MAX_VALUE);
}
