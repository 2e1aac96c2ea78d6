import { finiteBetween } from '../guard.js';
import type { Amps, Position, Volts, Watts } from '../units.js';
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
  readonly position: Position;
  /** Voltage of the signal at the instrument above the load's common, V. */
  readonly output: Determined<Volts>;
  /** Whether the source holds its voltage or stands at its current limit. */
  readonly sourceState: 'constant-voltage' | 'constant-current';
  readonly nodes: Readonly<Partial<Record<NodeName | NumberedNode, Determined<Volts>>>>;
  readonly parts: Readonly<Partial<Record<PartName | NumberedPart, PartState>>>;
  /** Heat of the track next to the wiper per length of the whole track, W: comparable with its power rating. */
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
  const point = describe(position, network, solution, sourceState);
  const { track } = circuit.sensor;
  const heat = (amps: Determined<Amps>): Determined<Watts> =>
    !isDetermined(amps) ? amps : amps === 0 || track === Infinity ? 0 : amps * amps * track;
  const { trackAbove, trackBelow } = solution.amps;
  return { ...point, trackHeat: { above: heat(trackAbove!), below: heat(trackBelow!) } };
}

/** A circuit's network in the state that its source is in, with the solution. */
export interface OperatingNetwork {
  readonly network: CircuitNetwork;
  readonly solution: NetworkSolution;
  readonly sourceState: OperatingPoint['sourceState'];
}

/** Solves a checked circuit; a source over its current limit is put in its constant-current state. */
export function operatingNetwork(circuit: Circuit, position: Position): OperatingNetwork {
  const free = atState(circuit, position, 'constant-voltage');
  const limit = circuit.source.currentLimit;
  if (limit === undefined || withinLimit(free.solution, limit)) return free;
  return atState(circuit, position, 'constant-current');
}

/** Solves a checked circuit with its source in a given state, consistent or not. */
export function atState(
  circuit: Circuit,
  position: Position,
  sourceState: OperatingPoint['sourceState'],
): OperatingNetwork {
  const free = circuitNetwork(circuit, position);
  const limit = circuit.source.currentLimit;
  const limited = sourceState === 'constant-current' && limit !== undefined;
  const network = limited ? atCurrentLimit(free, limit) : free;
  return { network, solution: solveNetwork(network), sourceState };
}

/** An unbounded current is over any limit; where it isn't unique the source still holds its voltage. */
function withinLimit({ amps }: NetworkSolution, limit: Amps): boolean {
  const drawn = amps.source!;
  return isDetermined(drawn) ? Math.abs(drawn) <= limit : drawn.kind === 'undetermined';
}

function atCurrentLimit(network: CircuitNetwork, limit: Amps): CircuitNetwork {
  const elements = network.elements.map(
    (element): Element =>
      element.id === 'source' && element.kind === 'voltage'
        ? {
            kind: 'current',
            id: 'source',
            from: element.from,
            to: element.to,
            amps: Math.sign(element.volts) * limit,
          }
        : element,
  );
  return { ...network, elements };
}

function describe(
  position: Position,
  network: CircuitNetwork,
  { volts, amps }: NetworkSolution,
  sourceState: OperatingPoint['sourceState'],
): Omit<OperatingPoint, 'trackHeat'> {
  const parts = Object.fromEntries(
    network.elements.map((element) => {
      const current = amps[element.id]!;
      return [element.id, { amps: current, watts: power(element, current, volts) }];
    }),
  );
  const output = difference(volts.signal!, volts[network.loadCommon]!);
  return { position, output, sourceState, nodes: volts, parts };
}

/** A voltage between two nodes; where the signal has none its reason counts first. */
function difference(signal: Determined<Volts>, common: Determined<Volts>): Determined<Volts> {
  if (!isDetermined(signal)) return signal;
  return isDetermined(common) ? signal - common : common;
}

function power(
  element: Element,
  amps: Determined<Amps>,
  volts: NetworkSolution['volts'],
): Determined<Watts> {
  if (element.kind === 'resistor' && element.ohms === 0) return 0;
  if (!isDetermined(amps)) return amps;
  if (element.kind === 'resistor') return amps === 0 ? 0 : amps * amps * element.ohms;
  if (element.kind === 'voltage') return amps * element.volts;
  const rise = volts[element.to]!;
  return isDetermined(rise) ? amps * rise : rise;
}
