import type { Ohms, Position } from '../units.js';
import { type Circuit, rightConnection } from './circuit.js';
import { lowerFaults } from './lowerFaults.js';
import type { Element, Network } from './network.js';
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
 */
export function circuitNetwork(circuit: Circuit, position: Position): CircuitNetwork {
  const { source, sensor, load, connection = rightConnection } = circuit;
  const { volts, limiter, contact, leads, shorts, broken, shorted } = lowerFaults(circuit);
  const { top, bottom, wiper } = sensor.terminalResistors ?? {};
  const [topInside, bottomInside, wiperInside] = [
    top ? 'topInside' : 'top',
    bottom ? 'bottomInside' : 'bottom',
    wiper ? 'wiperInside' : 'wiper',
  ];
  const loadCommon = load.common === 'sensor' ? connection.ground : 'common';
  const cuts = [...new Set(shorted.flat())].sort((one, other) => one - other);
  const cutAt = (place: Position): string => `trackCut${cuts.indexOf(place) + 1}`;
  const elements: Element[] = [
    { ...part('source', 'common', 'sourceInside'), volts },
    part('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms),
    part('limiter', 'sourcePlus', 'limited', limiter),
    part('supplyLead', 'limited', connection.supply, leads.supply),
    part('topResidual', topInside, 'trackTop', sensor.topResidual),
    ...trackPieces(
      sensor.track,
      position,
      broken,
      cuts.map((at) => ({ at, node: cutAt(at) })),
    ),
    part('bottomResidual', 'trackBottom', bottomInside, sensor.bottomResidual),
    part('groundLead', connection.ground, 'common', leads.ground),
    part('contact', 'track', wiperInside, contact),
    part('signalLead', connection.signal, 'signal', leads.signal),
    part('pullDown', 'signal', loadCommon, load.pullDown ?? Infinity),
    ...shorted.map(([from, to], i) => part(`trackShort${i + 1}`, cutAt(to), cutAt(from))),
    ...shorts.map(([one, other], i) => part(`short${i + 1}`, one, other)),
  ];
  if (top) elements.push(part('topTerminal', 'top', topInside, top));
  if (bottom) elements.push(part('bottomTerminal', bottomInside, 'bottom', bottom));
  if (wiper) elements.push(part('wiperTerminal', wiperInside, 'wiper', wiper));
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
