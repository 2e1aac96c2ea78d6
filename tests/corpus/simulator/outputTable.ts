import { type Circuit, operatingPoint, type Position, type Volts } from '@truesweep/core';

const pieces = 128;

/** The output of a hook-up over the wiper's position: the circuit solved at 129 places, straight lines between. */
export function outputTable(circuit: Circuit): (position: Position) => Volts {
  const table = Float64Array.from({ length: pieces + 2 }, (_, i) =>
    outputOf(circuit, Math.min(1, i / pieces)),
  );
  return (position) => {
    const at = Math.min(1, Math.max(0, position)) * pieces;
    const below = Math.floor(at);
    return table[below]! + (at - below) * (table[below + 1]! - table[below]!);
  };
}

/** The output of a hook-up with its wiper at a place, V; 0 where nothing determines it. */
export function outputOf(circuit: Circuit, position: Position): Volts {
  const { output } = operatingPoint(circuit, position);
  return typeof output === 'number' ? output : 0;
}

/** Where the load pulls the signal of a lifted wiper, V. */
export function liftedLevel(circuit: Circuit): Volts {
  const sensor = { ...circuit.sensor, contact: Number.POSITIVE_INFINITY };
  return outputOf({ ...circuit, sensor }, 0.5);
}
