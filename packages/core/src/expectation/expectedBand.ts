import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { contactLegs, millmanOutput } from '../circuit/millmanOutput.js';
import { sensitivities } from '../circuit/sensitivities.js';
import { InputError } from '../errors.js';
import { finiteBetween, wholeNumber } from '../guard.js';
import {
  type Contribution,
  combineUncertainties,
  type UncertainInput,
} from '../statistics/combineUncertainties.js';
import { type MonteCarloResult, monteCarlo } from '../statistics/monteCarlo.js';
import type { Travel, Volts } from '../units.js';
import { toleranceCorners, windowAt } from './expectedWindows.js';
import { outputFunction } from './outputFunction.js';
import { checkTolerances, type Tolerances, tolerancedParts } from './tolerances.js';

/** The nominal output over travel with a band around it, V. */
export interface Band {
  readonly travel: Float64Array;
  readonly nominal: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** A part with a tolerance, by name. */
export type ToleranceName = keyof Tolerances;

/**
 * The band in which the output lies whatever the parts are within their tolerances: the exact extremes over all
 * corners, at each travel.
 *
 * @param points How many travels, 2 to 10,000.
 * @throws InputError for a wrong circuit, tolerance or number of points.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * expectedBand(circuit, { source: 0.1 }, 3).high // => Float64Array [0, 2.75, 5.5]
 */
export function expectedBand(circuit: Circuit, tolerances: Tolerances, points = 101): Band {
  checkCircuit(circuit);
  checkTolerances(tolerances);
  wholeNumber(points, 2, 10_000, 'points');
  const corners = toleranceCorners(circuit, tolerances);
  const travel = Float64Array.from({ length: points }, (_, i) => i / (points - 1));
  const windows = Array.from(travel, (at) => windowAt(circuit, corners, tolerances, at));
  return {
    travel,
    nominal: Float64Array.from(windows, (window) => window.nominal),
    low: Float64Array.from(windows, (window) => window.low),
    high: Float64Array.from(windows, (window) => window.high),
  };
}

/** The standard uncertainty of the output at a travel, with what each part adds, largest first. */
export interface OutputUncertainty {
  readonly nominal: Volts;
  readonly uncertainty: Volts;
  readonly contributions: readonly Contribution<ToleranceName>[];
}

/**
 * The output's standard uncertainty at a travel by root sum of squares, each tolerance taken as a rectangular
 * distribution (a/√3), with exact partial derivatives.
 *
 * Method: JCGM 100:2008, equation 10 and 4.3.7; derivatives from the adjoint network.
 *
 * @param travel 0 to 1.
 * @throws InputError for a wrong circuit, tolerance or travel, or `no-output` where nothing is determined.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * const { uncertainty, contributions } = outputUncertainty(circuit, { source: 0.02, openPosition: 0.01 }, 1);
 * uncertainty.toFixed(5) // => '0.06455'
 * contributions[0].name // => 'source'
 */
export function outputUncertainty(
  circuit: Circuit,
  tolerances: Tolerances,
  travel: Travel,
): OutputUncertainty {
  checkCircuit(circuit);
  checkTolerances(tolerances);
  finiteBetween(travel, 0, 1, 'travel');
  const position = positionAt(circuit.sensor, travel);
  const nominal = outputFunction(circuit)(position);
  const answers = sensitivities(circuit, position);
  if (!answers)
    throw new InputError(
      'no-output',
      'circuit',
      'The currents are not determined; give every loop some resistance.',
    );
  const inputs: UncertainInput<ToleranceName>[] = tolerancedParts(circuit, tolerances).map(
    ({ name, halfWidth, sensitivity }) => ({
      name,
      sensitivity: sensitivity(answers),
      uncertainty: halfWidth / Math.sqrt(3),
    }),
  );
  const stops = [
    ['closedPosition', 1 - travel],
    ['openPosition', travel],
  ] as const;
  for (const [name, share] of stops) {
    const halfWidth = (tolerances[name] ?? 0) * share;
    if (halfWidth > 0)
      inputs.push({
        name,
        sensitivity: answers.perPosition,
        uncertainty: halfWidth / Math.sqrt(3),
      });
  }
  const { uncertainty, contributions } = combineUncertainties(inputs);
  return { nominal, uncertainty, contributions };
}

/**
 * The output's distribution at a travel by drawing every tolerance from a rectangular distribution.
 *
 * Method: JCGM 101:2008; the result bears its own standard errors.
 *
 * @param draws 100 to 10⁷.
 * @param seed The same seed gives the same draws.
 * @throws InputError for a wrong circuit, tolerance, travel or number of draws.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * drawOutput(circuit, { source: 0.02 }, 1, 10_000, 7).mean.toFixed(2) // => '5.00'
 */
export function drawOutput(
  circuit: Circuit,
  tolerances: Tolerances,
  travel: Travel,
  draws: number,
  seed: number,
): MonteCarloResult {
  checkCircuit(circuit);
  checkTolerances(tolerances);
  finiteBetween(travel, 0, 1, 'travel');
  wholeNumber(draws, 100, 1e7, 'draws');
  const parts = tolerancedParts(circuit, tolerances);
  const inputs = [
    ...parts.map(({ value, halfWidth }) => ({ value, width: halfWidth })),
    { value: 0, width: (tolerances.closedPosition ?? 0) * (1 - travel) },
    { value: 0, width: (tolerances.openPosition ?? 0) * travel },
  ].map((input) => ({ ...input, distribution: 'rectangular' as const }));
  const position = positionAt(circuit.sensor, travel);
  const model =
    legsModel(
      circuit,
      parts.map(({ name }) => name),
      position,
    ) ?? solverModel(circuit, parts, position);
  return monteCarlo(inputs, model, draws, seed);
}

type Model = (values: Float64Array) => Volts;

function within(position: number): number {
  return Math.min(1, Math.max(0, position));
}

/** For any circuit: the parts are set to the drawn values and the circuit is solved anew. */
function solverModel(
  circuit: Circuit,
  parts: ReturnType<typeof tolerancedParts>,
  position: number,
): Model {
  return (values) => {
    const drawn = parts.reduce((at, { withValue }, i) => withValue(at, values[i]!), circuit);
    return outputFunction(drawn)(
      within(position + values[parts.length]! + values[parts.length + 1]!),
    );
  };
}

/**
 * Where all legs meet at the contact: the same formula on plain numbers, so that a million draws take no longer
 * than the formula itself.
 */
function legsModel(
  circuit: Circuit,
  names: readonly ToleranceName[],
  position: number,
): Model | undefined {
  const legs = contactLegs(circuit);
  if (!legs) return undefined;
  const { sensor, limiter, load } = circuit;
  const pullUp = load.pullUp && 'volts' in load.pullUp ? load.pullUp : undefined;
  const at = (name: ToleranceName): number => names.indexOf(name);
  const [source, limit, track, bottom, top, contact, down, up, upVolts] = (
    [
      'source',
      'limiter',
      'track',
      'bottomResidual',
      'topResidual',
      'contact',
      'pullDown',
      'pullUp',
      'pullUpVolts',
    ] as const
  ).map(at) as [number, number, number, number, number, number, number, number, number];
  const above = legs.above - limiter - (sensor.topResidual ?? 0);
  const below = legs.below - (sensor.bottomResidual ?? 0);
  const signal = legs.signal - (sensor.contact ?? 0);
  const pick = (values: Float64Array, i: number, nominal: number): number =>
    i < 0 ? nominal : values[i]!;
  const count = names.length;
  const drawn = { ...legs };
  const mutable = drawn as { -readonly [key in keyof typeof drawn]: number };
  return (values) => {
    mutable.source = pick(values, source, legs.source);
    mutable.above =
      above + pick(values, limit, limiter) + pick(values, top, sensor.topResidual ?? 0);
    mutable.below = below + pick(values, bottom, sensor.bottomResidual ?? 0);
    mutable.track = pick(values, track, legs.track);
    mutable.signal = signal + pick(values, contact, sensor.contact ?? 0);
    const downward = 1 / pick(values, down, load.pullDown ?? Number.POSITIVE_INFINITY);
    const upward = pullUp ? 1 / pick(values, up, pullUp.ohms) : 0;
    const conductance = downward + upward;
    mutable.load = 1 / conductance;
    mutable.loadVolts =
      upward > 0 ? pick(values, upVolts, pullUp!.volts) * (upward / conductance) : 0;
    return millmanOutput(drawn, within(position + values[count]! + values[count + 1]!));
  };
}
