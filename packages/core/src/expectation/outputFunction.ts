import type { Circuit } from '../circuit/circuit.js';
import { type Determined, type Indeterminate, isDetermined } from '../circuit/determined.js';
import { contactLegs, legsOutput } from '../circuit/millmanOutput.js';
import { solveOperatingPoint } from '../circuit/operatingPoint.js';
import { InputError } from '../errors.js';
import type { Position, Volts } from '../units.js';

/**
 * The output of a checked circuit over the wiper's position: by the one node equation where all legs meet at the
 * contact, by the general solver elsewhere.
 *
 * @throws InputError `no-output`, from the function returned, where the output has no single finite value.
 */
export function outputFunction(circuit: Circuit): (position: Position) => Volts {
  const legs = contactLegs(circuit);
  return legs
    ? (position) => legsOutput(legs, position)
    : (position) => numberOrRefusal(solveOperatingPoint(circuit, position).output);
}

function numberOrRefusal(output: Determined<Volts>): Volts {
  if (isDetermined(output)) return output;
  throw noOutput(output.kind);
}

/** The error for an output that has no single finite value, by what it is instead. */
export function noOutput(kind: Indeterminate['kind']): InputError {
  return new InputError(
    'no-output',
    'circuit',
    kind === 'floating'
      ? 'The output floats: nothing ties it to the source. Give the circuit a load or a track that conducts.'
      : 'The output has no single value: sources are joined without resistance. Give one of them some.',
  );
}
