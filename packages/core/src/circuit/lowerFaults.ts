import type { Position, Volts } from '../units.js';
import { type Circuit, type Connection, rightConnection } from './circuit.js';
import type { Terminal } from './terminals.js';

/** A circuit with its faults turned into values and into pairs of joined nodes. */
export interface LoweredCircuit {
  readonly circuit: Circuit;
  readonly connection: Connection;
  /** Source voltage with its sign, V. */
  readonly volts: Volts;
  /** Pairs of nodes that touch. */
  readonly shorts: readonly (readonly [string, string])[];
  readonly brokenTrack: readonly Position[];
  readonly shortedTrack: readonly (readonly [Position, Position])[];
}

/** Applies each fault as a change of the elements; none has a formula of its own. */
export function lowerFaults(original: Circuit): LoweredCircuit {
  const connection = original.connection ?? rightConnection;
  const shorts: [string, string][] = [];
  const brokenTrack: Position[] = [];
  const shortedTrack: [Position, Position][] = [];
  let circuit = original;
  let sign = 1;
  for (const fault of original.faults ?? []) {
    switch (fault.kind) {
      case 'broken-lead':
        circuit = {
          ...circuit,
          leads: { ...circuit.leads, [fault.lead]: Number.POSITIVE_INFINITY },
        };
        break;
      case 'shorted-leads':
        shorts.push([connection[fault.leads[0]], connection[fault.leads[1]]]);
        break;
      case 'shorted-terminals':
        shorts.push([...fault.terminals] satisfies [Terminal, Terminal]);
        break;
      case 'shorted-signal':
        shorts.push([
          'signal',
          { source: 'sourcePlus', supply: 'limited', ground: 'common' }[fault.to],
        ]);
        break;
      case 'broken-track':
        brokenTrack.push(fault.position);
        break;
      case 'shorted-track':
        shortedTrack.push([Math.min(fault.from, fault.to), Math.max(fault.from, fault.to)]);
        break;
      case 'lifted-wiper':
        circuit = { ...circuit, sensor: { ...circuit.sensor, contact: Number.POSITIVE_INFINITY } };
        break;
      case 'no-limiter':
        circuit = { ...circuit, limiter: 0 };
        break;
      case 'wrong-source':
        circuit = { ...circuit, source: { ...circuit.source, volts: fault.volts } };
        break;
      case 'reversed-source':
        sign = -sign;
    }
  }
  return {
    circuit,
    connection,
    volts: sign * circuit.source.volts,
    shorts,
    brokenTrack,
    shortedTrack,
  };
}
