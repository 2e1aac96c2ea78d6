import type { Ohms, Position, Volts } from '../units.js';
import { type Circuit, type Leads, rightConnection } from './circuit.js';
import type { Lead } from './terminals.js';

/** What faults change in a circuit: values of its parts, and pairs of nodes and of places that touch. */
export interface LoweredFaults {
  /** Source voltage with its sign, V. */
  readonly volts: Volts;
  readonly limiter: Ohms;
  readonly contact: Ohms | undefined;
  readonly leads: Leads;
  readonly shorts: readonly (readonly [string, string])[];
  /** Places where the track conducts nothing. */
  readonly broken: readonly Position[];
  /** Stretches of the track that are bridged, each from its lower to its upper end. */
  readonly shorted: readonly (readonly [Position, Position])[];
}

/** Applies each fault as a change of the elements; none has a formula of its own. */
export function lowerFaults(circuit: Circuit): LoweredFaults {
  const { source, sensor, connection = rightConnection, faults = [] } = circuit;
  let { volts } = source;
  let sign = 1;
  let { limiter } = circuit;
  let { contact } = sensor;
  const leads: Partial<Record<Lead, Ohms>> = { ...circuit.leads };
  const shorts: [string, string][] = [];
  const broken: Position[] = [];
  const shorted: [Position, Position][] = [];
  for (const fault of faults) {
    switch (fault.kind) {
      case 'broken-lead':
        leads[fault.lead] = Infinity;
        break;
      case 'shorted-leads':
        shorts.push([connection[fault.leads[0]], connection[fault.leads[1]]]);
        break;
      case 'shorted-terminals':
        shorts.push([...fault.terminals]);
        break;
      case 'shorted-signal':
        shorts.push(['signal', touched[fault.to]]);
        break;
      case 'broken-track':
        broken.push(fault.position);
        break;
      case 'shorted-track':
        shorted.push([Math.min(fault.from, fault.to), Math.max(fault.from, fault.to)]);
        break;
      case 'lifted-wiper':
        contact = Infinity;
        break;
      case 'no-limiter':
        limiter = 0;
        break;
      case 'wrong-source':
        volts = fault.volts;
        break;
      case 'reversed-source':
        sign = -sign;
    }
  }
  return { volts: sign * volts, limiter, contact, leads, shorts, broken, shorted };
}

/** The nodes that a signal lead can touch. */
const touched = { source: 'sourcePlus', supply: 'limited', ground: 'common' };
