import type { Amps, Ohms, Position } from '../units.js';
import { type Circuit, rightConnection } from './circuit.js';
import { lowerFaults } from './lowerFaults.js';
import type { Element, Network } from './network.js';
import type { Terminal } from './terminals.js';
import { trackPieces } from './trackPieces.js';

/** The parts of a bench circuit that carry current, named as in the drawing. */
export type PartName =
  | 'source'
  | 'sourceResistance'
  | 'limiter'
  | 'supplyLead'
  | 'topTerminal'
  | 'topResidual'
  | 'trackAbove'
  | 'trackBelow'
  | 'bottomResidual'
  | 'bottomTerminal'
  | 'groundLead'
  | 'contact'
  | 'wiperTerminal'
  | 'signalLead'
  | 'pullDown'
  | 'pullUp'
  | 'pullUpSource';

/** Pieces of a track with shorted stretches, counted outward from the wiper, and the shorts themselves. */
export type NumberedPart =
  | `trackAbove${number}`
  | `trackBelow${number}`
  | `trackShort${number}`
  | `short${number}`;

/** The nodes of a bench circuit. `common` is the source's minus: every voltage counts from it. */
export type NodeName =
  | 'common'
  | 'sourceInside'
  | 'sourcePlus'
  | 'limited'
  | 'top'
  | 'topInside'
  | 'trackTop'
  | 'track'
  | 'trackBottom'
  | 'bottomInside'
  | 'bottom'
  | 'wiperInside'
  | 'wiper'
  | 'signal'
  | 'pullUpFeed';

/** The ends of the track's shorted stretches, counted from the bottom. */
export type NumberedNode = `trackCut${number}`;

/** A bench circuit as a list of elements, and the node that the instrument counts from. */
export interface CircuitNetwork extends Network {
  readonly loadCommon: string;
}

/**
 * The list of elements of a bench circuit with its wiper at a place on the track, faults included.
 *
 * @param circuit The circuit, checked.
 * @param position Fraction of the track below the wiper, 0 to 1.
 * @param held The current that the source stands at instead of its voltage, A.
 */
export function circuitNetwork(circuit: Circuit, position: Position, held?: Amps): CircuitNetwork {
  const { source, sensor, load, connection = rightConnection } = circuit;
  const { volts, limiter, contact, leads, shorts, broken, shorted } = lowerFaults(circuit);
  const built = sensor.terminalResistors ?? {};
  const inside = (terminal: Terminal): string => (built[terminal] ? `${terminal}Inside` : terminal);
  const loadCommon = load.common === 'sensor' ? connection.ground : 'common';
  const cuts = [...new Set(shorted.flat())].sort((one, other) => one - other);
  const cutAt = (place: Position): string => `trackCut${cuts.indexOf(place) + 1}`;
  const elements: Element[] = [
    held === undefined
      ? { ...part('source', 'common', 'sourceInside'), volts }
      : { ...part('source', 'common', 'sourceInside', Infinity), amps: Math.sign(volts) * held },
    part('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms),
    part('limiter', 'sourcePlus', 'limited', limiter),
    part('supplyLead', 'limited', connection.supply, leads.supply),
    part('topResidual', inside('top'), 'trackTop', sensor.topResidual),
    ...trackPieces(
      sensor.track,
      position,
      broken,
      cuts.map((at) => ({ at, node: cutAt(at) })),
    ),
    part('bottomResidual', 'trackBottom', inside('bottom'), sensor.bottomResidual),
    part('groundLead', connection.ground, 'common', leads.ground),
    part('contact', 'track', inside('wiper'), contact),
    part('signalLead', connection.signal, 'signal', leads.signal),
    part('pullDown', 'signal', loadCommon, load.pullDown ?? Infinity),
    ...shorted.map(([from, to], i) => part(`trackShort${i + 1}`, cutAt(to), cutAt(from))),
    ...shorts.map(([one, other], i) => part(`short${i + 1}`, one, other)),
  ];
  for (const terminal of ['top', 'bottom', 'wiper'] as const) {
    const ohms = built[terminal];
    const ends = terminal === 'top' ? [terminal, inside(terminal)] : [inside(terminal), terminal];
    if (ohms) elements.push(part(`${terminal}Terminal`, ends[0]!, ends[1]!, ohms));
  }
  if (load.pullUp) {
    const { pullUp } = load;
    const feeds = { source: 'sourcePlus', sensor: connection.supply };
    const feed = 'from' in pullUp ? feeds[pullUp.from] : 'pullUpFeed';
    if ('volts' in pullUp)
      elements.push({ ...part('pullUpSource', loadCommon, feed), volts: pullUp.volts });
    elements.push(part('pullUp', feed, 'signal', pullUp.ohms));
  }
  return { reference: 'common', elements, loadCommon };
}

function part(id: string, from: string, to: string, ohms: Ohms = 0): Element {
  return { id, from, to, ohms };
}
