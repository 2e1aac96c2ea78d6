import type { Circuit } from '../circuit/circuit.js';
import { isDetermined } from '../circuit/determined.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import type { Volts } from '../units.js';

/** The signal of a checked circuit with its wiper lifted, V; nothing where no load pulls it anywhere. */
export function restLevelOf(circuit: Circuit): Volts | undefined {
  const lifted = { ...circuit, sensor: { ...circuit.sensor, contact: Infinity } };
  const { output } = solveOperatingPoint(lifted, 0.5);
  return isDetermined(output) ? output : undefined;
}
