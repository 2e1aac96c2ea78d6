import { finiteBetween } from '../guard.js';
import type { Amps, Ohms, Position, Volts, Watts } from '../units.js';
import { checkCircuit } from './checkCircuit.js';
import type { Circuit } from './circuit.js';
import {
  type CircuitNetwork,
  circuitNetwork,
  type NodeName,
  type NumberedNode,
  type NumberedPart,
  type PartName,
} from './circuitNetwork.js';
import { type Determined, isDetermined } from './determined.js';
import type { Element } from './network.js';
import { type NetworkSolution, solveNetwork } from './solveNetwork.js';

/** Current through a part and the heat in it (for a source: the power that it gives). */
export interface PartState {
  /** A; positive the way current runs in normal use: out of a source, down the track, out of the wiper. */
  readonly amps: Determined<Amps>;
  /** W. */
  readonly watts: Determined<Watts>;
}

/** Everything that a circuit does with its wiper at one place. */
export interface OperatingPoint {
  /** Where the wiper stands: fraction of the track, 0 at its bottom terminal to 1 at its top. */
  readonly position: Position;
  /** Voltage of the signal at the instrument above the load's common, V. */
  readonly output: Determined<Volts>;
  /** Whether the source holds its voltage or stands at its current limit. */
  readonly sourceState: 'constant-voltage' | 'constant-current';
  /** Voltage of each node above the source's minus, V. */
  readonly nodes: Readonly<Partial<Record<NodeName | NumberedNode, Determined<Volts>>>>;
  /** Current, voltage and heat of each part that the circuit has. */
  readonly parts: Readonly<Partial<Record<PartName | NumberedPart, PartState>>>;
  /**
   * Heat of the track next to the wiper per length of the whole track, W, 0 or more: above and below it, comparable with the track's power
   * rating.
   */
  readonly trackHeat: { readonly above: Determined<Watts>; readonly below: Determined<Watts> };
}

/**
 * Solves a bench circuit with its wiper at a place on the track: voltages, currents and heat.
 *
 * Method: star-mesh elimination, whose one-node case is Millman's theorem. A source with a current limit
 * is solved as a voltage source first; where that asks more than the limit, as a current source.
 *
 * @param circuit The circuit, in SI units; resistances 0 Ω to ∞.
 * @param position Fraction of the track below the wiper, 0 to 1.
 * @returns Finite numbers, or for a quantity that has none the reason why.
 * @throws InputError with the path of a missing or impossible field.
 *
 * @example
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * operatingPoint(circuit, 1).output // => 5
 * operatingPoint(circuit, 1).parts.limiter // => { amps: 0.001, watts: 0.001 }
 */
export function operatingPoint(circuit: Circuit, position: Position): OperatingPoint {
  checkCircuit(circuit);
  finiteBetween(position, 0, 1, 'position');
  return solveOperatingPoint(circuit, position);
}

/** As {@link operatingPoint}, for a circuit and position that were checked already. */
export function solveOperatingPoint(circuit: Circuit, position: Position): OperatingPoint {
  const { network, solution, sourceState } = operatingNetwork(circuit, position);
  const { volts, amps } = solution;
  const parts = network.elements.map((element) => {
    const current = amps[element.id]!;
    return [element.id, { amps: current, watts: power(element, current, volts) }];
  });
  const signal = volts.signal!;
  const common = volts[network.loadCommon]!;
  const { track } = circuit.sensor;
  return {
    position,
    output: !isDetermined(signal) ? signal : !isDetermined(common) ? common : signal - common,
    sourceState,
    nodes: volts,
    parts: Object.fromEntries(parts),
    trackHeat: { above: heat(amps.trackAbove!, track), below: heat(amps.trackBelow!, track) },
  };
}

/** A circuit's network in the state that its source is in, with the solution. */
export interface OperatingNetwork {
  readonly network: CircuitNetwork;
  readonly solution: NetworkSolution;
  readonly sourceState: OperatingPoint['sourceState'];
}

/** Solves a checked circuit; a source over its current limit is put in its constant-current state. */
export function operatingNetwork(circuit: Circuit, position: Position): OperatingNetwork {
  const free = atState(circuit, position);
  const { currentLimit = Infinity } = circuit.source;
  const drawn = free.solution.amps.source!;
  // An unbounded current is over any limit; where it isn't unique the source still holds its voltage.
  const over = isDetermined(drawn) ? Math.abs(drawn) > currentLimit : drawn.kind === 'unbounded';
  return over && currentLimit < Infinity ? atState(circuit, position, currentLimit) : free;
}

/** Solves a checked circuit with its source holding its voltage or, where given, a current; consistent or not. */
export function atState(circuit: Circuit, position: Position, held?: Amps): OperatingNetwork {
  const network = circuitNetwork(circuit, position, held);
  const sourceState = held === undefined ? 'constant-voltage' : 'constant-current';
  return { network, solution: solveNetwork(network), sourceState };
}

function power(
  { to, ohms, volts, amps: driven }: Element,
  amps: Determined<Amps>,
  nodes: NetworkSolution['volts'],
): Determined<Watts> {
  if (volts === undefined && driven === undefined) return heat(amps, ohms);
  const rise = volts ?? nodes[to]!;
  return !isDetermined(amps) ? amps : isDetermined(rise) ? amps * rise : rise;
}

/** Heat of a current in a resistance: none in 0 Ω and in ∞ Ω, whatever their current. */
export function heat(amps: Determined<Amps>, ohms: Ohms): Determined<Watts> {
  if (ohms === 0 || ohms === Infinity) return 0;
  return isDetermined(amps) ? amps * amps * ohms : amps;
}
