import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { type Determined, isDetermined } from '../circuit/determined.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import { InputError } from '../errors.js';
import type { Volts } from '../units.js';

/** The output over travel, point by point. */
export interface Curve {
  /** Fractions of travel from 0 to 1 in equal steps. */
  readonly travel: Float64Array;
  /** Output at each travel, V. */
  readonly volts: Float64Array;
}

/**
 * The output that a circuit must show from the closed to the open stop.
 *
 * @param circuit The circuit, in SI units.
 * @param points How many points, 2 to 100,000; 101 (each percent of travel) when left out.
 * @throws InputError for a wrong circuit, or `no-output` where the output has no single finite value.
 *
 * @example
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * expectedCurve(circuit, 3).volts // => Float64Array [0, 2.5, 5]
 */
export function expectedCurve(circuit: Circuit, points = 101): Curve {
  checkCircuit(circuit);
  if (!Number.isInteger(points) || points < 2 || points > 100_000) {
    throw new InputError(
      'out-of-range',
      'points',
      `points is ${points}; it must be a whole number from 2 to 100000.`,
    );
  }
  const travel = Float64Array.from({ length: points }, (_, i) => i / (points - 1));
  const volts = travel.map((at) => outputVolts(circuit, positionAt(circuit.sensor, at)));
  return { travel, volts };
}

/** The output of a checked circuit as a number, refused where it has none. */
export function outputVolts(circuit: Circuit, position: number): Volts {
  const { output } = solveOperatingPoint(circuit, position);
  if (isDetermined(output)) return output;
  throw new InputError('no-output', 'circuit', refusal(output));
}

function refusal(output: Exclude<Determined<Volts>, number>): string {
  return output.kind === 'floating'
    ? 'The output floats: nothing ties the signal to the source. Give the circuit a track that conducts, or a load.'
    : 'The output has no single value: sources are joined without resistance. Give the source, the pull-up or a lead some resistance.';
}
