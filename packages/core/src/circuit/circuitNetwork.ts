import type { Ohms, Position } from '../units.js';
import type { Circuit } from './circuit.js';
import type { Element, Network } from './network.js';

/** The parts of a bench circuit that carry current, named as in the drawing. */
export type PartName =
  | 'source'
  | 'sourceResistance'
  | 'limiter'
  | 'supplyLead'
  | 'topResidual'
  | 'trackAbove'
  | 'trackBelow'
  | 'bottomResidual'
  | 'groundLead'
  | 'contact'
  | 'signalLead'
  | 'pullDown'
  | 'pullUp'
  | 'pullUpSource';

/** The nodes of a bench circuit. `common` is the source's minus: every voltage counts from it. */
export type NodeName =
  | 'common'
  | 'sourceInside'
  | 'sourcePlus'
  | 'limited'
  | 'top'
  | 'trackTop'
  | 'track'
  | 'trackBottom'
  | 'bottom'
  | 'wiper'
  | 'signal'
  | 'pullUpFeed';

/**
 * The list of elements of a bench circuit with its wiper at a place on the track.
 *
 * @param circuit The circuit, checked.
 * @param position Fraction of the track below the wiper, 0 to 1.
 */
export function circuitNetwork(circuit: Circuit, position: Position): Network {
  const { source, leads = {}, sensor, load } = circuit;
  const elements: Element[] = [
    { kind: 'voltage', id: 'source', from: 'common', to: 'sourceInside', volts: source.volts },
    part('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms ?? 0),
    part('limiter', 'sourcePlus', 'limited', circuit.limiter),
    part('supplyLead', 'limited', 'top', leads.supply ?? 0),
    part('topResidual', 'top', 'trackTop', sensor.topResidual ?? 0),
    part('trackAbove', 'trackTop', 'track', section(sensor.track, 1 - position)),
    part('trackBelow', 'track', 'trackBottom', section(sensor.track, position)),
    part('bottomResidual', 'trackBottom', 'bottom', sensor.bottomResidual ?? 0),
    part('groundLead', 'bottom', 'common', leads.ground ?? 0),
    part('contact', 'track', 'wiper', sensor.contact ?? 0),
    part('signalLead', 'wiper', 'signal', leads.signal ?? 0),
    part('pullDown', 'signal', 'common', load.pullDown ?? Number.POSITIVE_INFINITY),
  ];
  if (load.pullUp) {
    const { ohms, volts } = load.pullUp;
    elements.push(
      { kind: 'voltage', id: 'pullUpSource', from: 'common', to: 'pullUpFeed', volts },
      part('pullUp', 'pullUpFeed', 'signal', ohms),
    );
  }
  return { reference: 'common', elements };
}

function part(id: PartName, from: NodeName, to: NodeName, ohms: Ohms): Element {
  return { kind: 'resistor', id, from, to, ohms };
}

/** A piece of the track; below 1 pΩ it counts as none, so a piece of no length is 0 Ω even of a broken track. */
function section(track: Ohms, fraction: number): Ohms {
  const ohms = fraction === 0 ? 0 : track * fraction;
  return ohms < 1e-12 ? 0 : ohms;
}
