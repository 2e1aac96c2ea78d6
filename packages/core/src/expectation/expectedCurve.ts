import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { wholeNumber } from '../guard.js';
import { outputFunction } from './outputFunction.js';

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
  wholeNumber(points, 2, 100_000, 'points');
  const travel = Float64Array.from({ length: points }, (_, i) => i / (points - 1));
  const output = outputFunction(circuit);
  const volts = travel.map((at) => output(positionAt(circuit.sensor, at)));
  return { travel, volts };
}
