import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { contactLegs, millmanOutput } from '../circuit/millmanOutput.js';
import { sensitivities } from '../circuit/sensitivities.js';
import { finiteBetween, wholeNumber } from '../guard.js';
import {
  type Contribution,
  combineUncertainties,
  type UncertainInput,
} from '../statistics/combineUncertainties.js';
import { type MonteCarloResult, monteCarlo } from '../statistics/monteCarlo.js';
import type { Travel, Volts } from '../units.js';
import { checkTolerances } from './checkTolerances.js';
import { type ReadingWindow, toleranceCorners, windowAt } from './expectedWindows.js';
import { noOutput, outputFunction } from './outputFunction.js';
import { type Tolerances, tolerancedParts } from './tolerances.js';

/** The nominal output over travel with a band around it, V. */
export interface Band {
  /** Travel of each point, rising from 0 closed to 1 open. */
  readonly travel: Float64Array;
  /** Output of the nominal parts at each travel, V. */
  readonly nominal: Float64Array;
  /** Lower edge of the band at each travel, V. */
  readonly low: Float64Array;
  /** Upper edge of the band at each travel, V. */
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
  const all = (end: keyof ReadingWindow): Float64Array =>
    Float64Array.from(windows, (window) => window[end]);
  return { travel, nominal: all('nominal'), low: all('low'), high: all('high') };
}

/** The standard uncertainty of the output at a travel, with what each part adds, largest first. */
export interface OutputUncertainty {
  /** Output of the nominal parts, V. */
  readonly nominal: Volts;
  /** Its standard uncertainty, V, 0 or more. */
  readonly uncertainty: Volts;
  /** What each part's tolerance adds, V, largest first. */
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
  if (!answers) throw noOutput('undetermined');
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
  const position = positionAt(circuit.sensor, travel);
  const { parts, model } =
    legsModel(circuit, tolerances, position) ?? solverModel(circuit, tolerances, position);
  const stops = [
    { value: 0, halfWidth: (tolerances.closedPosition ?? 0) * (1 - travel) },
    { value: 0, halfWidth: (tolerances.openPosition ?? 0) * travel },
  ];
  const inputs = [...parts, ...stops].map(({ value, halfWidth }) => ({
    value,
    width: halfWidth,
    distribution: 'rectangular' as const,
  }));
  return monteCarlo(inputs, model, draws, seed);
}

/** The output from drawn values: first those of the parts, in their order, then both stops' share of the position. */
interface DrawnModel {
  readonly parts: readonly { readonly value: number; readonly halfWidth: number }[];
  readonly model: (values: Float64Array) => Volts;
}

function within(position: number): number {
  return Math.min(1, Math.max(0, position));
}

/** For any circuit: the parts are set to the drawn values and the circuit is solved anew. */
function solverModel(circuit: Circuit, tolerances: Tolerances, position: number): DrawnModel {
  const parts = tolerancedParts(circuit, tolerances);
  const model = (values: Float64Array): Volts => {
    const drawn = parts.reduce((at, { withValue }, i) => withValue(at, values[i]!), circuit);
    return outputFunction(drawn)(
      within(position + values[parts.length]! + values[parts.length + 1]!),
    );
  };
  return { parts, model };
}

/**
 * Where all legs meet at the contact: the same formula on plain numbers, so that a million draws take little longer
 * than the formula itself. Each part has its place among the values, whether it has a tolerance or not.
 */
function legsModel(
  circuit: Circuit,
  tolerances: Tolerances,
  position: number,
): DrawnModel | undefined {
  const legs = contactLegs(circuit);
  if (!legs) return undefined;
  const { limiter } = circuit;
  const { bottomResidual = 0, topResidual = 0, contact = 0 } = circuit.sensor;
  const { pullDown = Infinity, pullUp } = circuit.load;
  const [hasDown, hasUp] = [Number.isFinite(pullDown), Number.isFinite(pullUp?.ohms)];
  const toleranced = tolerancedParts(circuit, tolerances);
  const part = (name: ToleranceName, value: number) => ({
    value,
    halfWidth: toleranced.find((one) => one.name === name)?.halfWidth ?? 0,
  });
  const parts = [
    part('source', legs.source),
    part('limiter', limiter),
    part('track', legs.track),
    part('bottomResidual', bottomResidual),
    part('topResidual', topResidual),
    part('contact', contact),
    part('pullDown', hasDown ? pullDown : 0),
    part('pullUp', hasUp ? pullUp!.ohms : 0),
    part('pullUpVolts', pullUp && 'volts' in pullUp ? pullUp.volts : 0),
  ];
  const above = legs.above - limiter - topResidual;
  const below = legs.below - bottomResidual;
  const signal = legs.signal - contact;
  const model = (values: Float64Array): Volts => {
    const upward = hasUp ? 1 / values[7]! : 0;
    const conductance = hasDown ? 1 / values[6]! + upward : upward;
    const x = within(position + values[9]! + values[10]!);
    return millmanOutput(
      values[0]!,
      above + values[1]! + values[4]! + (1 - x) * values[2]!,
      below + values[3]! + x * values[2]!,
      signal + values[5]!,
      hasUp ? values[8]! * (upward / conductance) : 0,
      1 / conductance,
    );
  };
  return { parts, model };
}
