import type { Ohms, Position } from '../units.js';
import type { Circuit } from './circuit.js';
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
 * @param original The circuit, checked.
 * @param position Fraction of the track below the wiper, 0 to 1.
 */
export function circuitNetwork(original: Circuit, position: Position): CircuitNetwork {
  const { circuit, connection, volts, shorts, brokenTrack, shortedTrack } = lowerFaults(original);
  const { source, leads = {}, sensor, load } = circuit;
  const loadCommon = load.common === 'sensor' ? connection.ground : 'common';
  const { pieces, nodeAt } = trackPieces(sensor.track, position, brokenTrack, shortedTrack);
  const [top, bottom, wiper] = (['top', 'bottom', 'wiper'] as const).map((terminal) =>
    sensor.terminalResistors?.[terminal] ? `${terminal}Inside` : terminal,
  ) as [string, string, string];
  const elements: Element[] = [
    { kind: 'voltage', id: 'source', from: 'common', to: 'sourceInside', volts },
    part('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms),
    part('limiter', 'sourcePlus', 'limited', circuit.limiter),
    part('supplyLead', 'limited', connection.supply, leads.supply),
    part('topResidual', top, 'trackTop', sensor.topResidual),
    ...pieces.toReversed().map(({ id, upper, lower, ohms }) => part(id, upper, lower, ohms)),
    part('bottomResidual', 'trackBottom', bottom, sensor.bottomResidual),
    part('groundLead', connection.ground, 'common', leads.ground),
    part('contact', 'track', wiper, sensor.contact),
    part('signalLead', connection.signal, 'signal', leads.signal),
    part('pullDown', 'signal', loadCommon, load.pullDown ?? Number.POSITIVE_INFINITY),
    ...shortedTrack.map(([from, to], i) => part(`trackShort${i + 1}`, nodeAt(to), nodeAt(from))),
    ...shorts.map(([one, other], i) => part(`short${i + 1}`, one, other)),
  ];
  if (top !== 'top') elements.push(part('topTerminal', 'top', top, sensor.terminalResistors?.top));
  if (bottom !== 'bottom') {
    elements.push(part('bottomTerminal', bottom, 'bottom', sensor.terminalResistors?.bottom));
  }
  if (wiper !== 'wiper') {
    elements.push(part('wiperTerminal', wiper, 'wiper', sensor.terminalResistors?.wiper));
  }
  if (load.pullUp) elements.push(...pullUpElements(load.pullUp, connection.supply, loadCommon));
  return { reference: 'common', elements, loadCommon };
}

function pullUpElements(
  pullUp: NonNullable<Circuit['load']['pullUp']>,
  supplyTerminal: string,
  loadCommon: string,
): readonly Element[] {
  if ('from' in pullUp) {
    const feed = pullUp.from === 'source' ? 'sourcePlus' : supplyTerminal;
    return [part('pullUp', feed, 'signal', pullUp.ohms)];
  }
  const { ohms, volts } = pullUp;
  return [
    { kind: 'voltage', id: 'pullUpSource', from: loadCommon, to: 'pullUpFeed', volts },
    part('pullUp', 'pullUpFeed', 'signal', ohms),
  ];
}

function part(id: string, from: string, to: string, ohms: Ohms = 0): Element {
  return { kind: 'resistor', id, from, to, ohms };
}
