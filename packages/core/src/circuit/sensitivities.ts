import type { Position } from '../units.js';
import type { Circuit } from './circuit.js';
import { isDetermined } from './determined.js';
import { operatingNetwork } from './operatingPoint.js';
import { solveNetwork } from './solveNetwork.js';

/** Partial derivatives of the output, exact, by the name of the part. */
export interface Sensitivities {
  /** V per Ω of each resistance. */
  readonly perOhm: Readonly<Record<string, number>>;
  /** V per V of each voltage source; 0 for a source at its current limit. */
  readonly perVolt: Readonly<Record<string, number>>;
  /** V per Ω of the whole track. */
  readonly perTrackOhm: number;
  /** V per unit of the wiper's position. */
  readonly perPosition: number;
}

/**
 * How the output answers to each part of a checked circuit, from one further solution of the same network: with
 * its sources at rest and 1 A fed into the output, the derivative by a resistance is the product of its two
 * currents. Nothing where the output or a current is not determined.
 *
 * Method: adjoint network, from Tellegen's theorem (S. W. Director and R. A. Rohrer, IEEE Trans. Circuit Theory
 * 16, 1969; from memory).
 */
export function sensitivities(circuit: Circuit, position: Position): Sensitivities | undefined {
  const { network, solution } = operatingNetwork(circuit, position);
  const atRest = network.elements.map(({ id, from, to, ohms }) => ({ id, from, to, ohms }));
  const probe = { id: 'probe', from: network.loadCommon, to: 'signal', ohms: Infinity, amps: 1 };
  const adjoint = solveNetwork({ ...network, elements: [...atRest, probe] });
  if (!isDetermined(adjoint.volts.signal!) || !isDetermined(solution.volts.signal!))
    return undefined;
  const perOhm: Record<string, number> = {};
  const perVolt: Record<string, number> = {};
  for (const { id, volts, amps: driven } of network.elements) {
    const amps = solution.amps[id]!;
    const answer = adjoint.amps[id]!;
    if (!isDetermined(amps) || !isDetermined(answer)) return undefined;
    if (volts === undefined && driven === undefined) perOhm[id] = amps * answer;
    else perVolt[id] = 0 - answer;
  }
  const { track } = circuit.sensor;
  if (track === Infinity) return { perOhm, perVolt, perTrackOhm: 0, perPosition: 0 };
  let perTrackOhm = 0;
  for (const element of network.elements) {
    if (!/^track(Above|Below)/.test(element.id)) continue;
    if (element.ohms < Infinity) perTrackOhm += perOhm[element.id]! * (element.ohms / track);
  }
  const perPosition = track * (perOhm.trackBelow! - perOhm.trackAbove!);
  return { perOhm, perVolt, perTrackOhm, perPosition };
}
