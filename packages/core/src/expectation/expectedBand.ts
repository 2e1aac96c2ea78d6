import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { type ContactLegs, contactLegs, millmanOutput } from '../circuit/millmanOutput.js';
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
  const stops = [
    (tolerances.closedPosition ?? 0) * (1 - travel),
    (tolerances.openPosition ?? 0) * travel,
  ].filter((width) => width > 0);
  const inputs = [
    ...parts.map(({ value, halfWidth }) => ({ value, width: halfWidth })),
    ...stops.map((width) => ({ value: 0, width })),
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

/** Where the wiper stands with what was drawn for the stops, which comes after the parts. */
function placeWith(position: number, values: Float64Array, parts: number): number {
  let place = position;
  for (let i = parts; i < values.length; i++) place += values[i]!;
  return Math.min(1, Math.max(0, place));
}

/** For any circuit: the parts are set to the drawn values and the circuit is solved anew. */
function solverModel(
  circuit: Circuit,
  parts: ReturnType<typeof tolerancedParts>,
  position: number,
): Model {
  return (values) => {
    const drawn = parts.reduce((at, { withValue }, i) => withValue(at, values[i]!), circuit);
    return outputFunction(drawn)(placeWith(position, values, parts.length));
  };
}

/**
 * Where all legs meet at the contact: the same formula on plain numbers, so that a million draws take little longer
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
  const { bottomResidual = 0, topResidual = 0, contact = 0 } = sensor;
  const { pullDown = Number.POSITIVE_INFINITY } = load;
  const count = names.length;
  // A place for each part, whether it has a tolerance or not; `places` says where each drawn value belongs.
  const order: readonly ToleranceName[] = [
    'source',
    'limiter',
    'track',
    'bottomResidual',
    'topResidual',
    'contact',
    'pullDown',
    'pullUp',
    'pullUpVolts',
  ];
  const all = Float64Array.of(
    legs.source,
    limiter,
    legs.track,
    bottomResidual,
    topResidual,
    contact,
    pullDown,
    pullUp?.ohms ?? Number.POSITIVE_INFINITY,
    pullUp?.volts ?? 0,
  );
  const places = Uint8Array.from(names, (name) => order.indexOf(name));
  const above = legs.above - limiter - topResidual;
  const below = legs.below - bottomResidual;
  const signal = legs.signal - contact;
  const drawn: { -readonly [key in keyof ContactLegs]: number } = { ...legs };
  return (values) => {
    for (let i = 0; i < count; i++) all[places[i]!] = values[i]!;
    drawn.source = all[0]!;
    drawn.above = above + all[1]! + all[4]!;
    drawn.track = all[2]!;
    drawn.below = below + all[3]!;
    drawn.signal = signal + all[5]!;
    const upward = 1 / all[7]!;
    const conductance = 1 / all[6]! + upward;
    drawn.load = 1 / conductance;
    drawn.loadVolts = upward > 0 ? all[8]! * (upward / conductance) : 0;
    return millmanOutput(drawn, placeWith(position, values, count));
  };
}
