import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { contactLegs, millmanOutput } from '../circuit/millmanOutput.js';
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
  const travel = new Float64Array(points);
  const volts = new Float64Array(points);
  const { sensor } = circuit;
  const last = points - 1;
  const legs = contactLegs(circuit);
  // The formula itself where it holds: through a function of the circuit a curve takes half as long again.
  if (legs) {
    const { source, above, below, track, signal, loadVolts, load } = legs;
    const [closed, open] = [positionAt(sensor, 0), positionAt(sensor, 1)];
    const wholeTrack = closed === 0 && open === 1;
    for (let i = 0; i < points; i++) {
      const x = i / last;
      const position = wholeTrack ? x : closed * (1 - x) + open * x;
      const up = above + (1 - position) * track;
      travel[i] = x;
      volts[i] = millmanOutput(source, up, below + position * track, signal, loadVolts, load);
    }
  } else {
    const output = outputFunction(circuit);
    for (let i = 0; i < points; i++) {
      travel[i] = i / last;
      volts[i] = output(positionAt(sensor, travel[i]!));
    }
  }
  return { travel, volts };
}
