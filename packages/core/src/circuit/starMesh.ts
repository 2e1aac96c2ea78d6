import { addTo } from './addTo.js';
import { farEnd } from './farEnd.js';
import type { Element } from './network.js';

/** A resistance between two nodes; 0 Ω joins them. */
export type Edge = Pick<Element, 'from' | 'to' | 'ohms'>;

/** What one source drives through a network of resistances. */
export interface Driven {
  /** Voltage of each node above the node that the source's current counts from. */
  readonly volts: Map<string, number>;
  /** Current of the source and of each part; none where left out. */
  readonly amps: Map<Edge, number>;
  /** Determinant of the network up to a constant factor of its form: the product of each node's ΣG. */
  readonly determinant: number;
}

/**
 * Solves a network of resistances with one source: takes a node out by the star-mesh transformation, solves what
 * is left, and hands its voltages and currents back. Nothing is ever subtracted from a conductance, so nothing
 * cancels; a current of a part is a sum of shares, never what the others leave over.
 *
 * Method: star-mesh transformation (L. Rosen, "A new network theorem", Journal of the IEE 62, 1924),
 * whose one-node case is Millman's theorem.
 *
 * @param edges Each below ∞ Ω and between two different nodes, with no loop of 0 Ω among them and the source.
 */
export function starMesh(edges: readonly Edge[], drive: Element): Driven {
  const node = fewestLegs(edges, drive);
  if (node === undefined) return acrossDrive(edges, drive);
  const legs = edges.filter((edge) => farEnd(edge, node) !== undefined);
  const joined = legs.find(({ ohms }) => ohms === 0);
  const siemens = joined ? 1 : conductance(legs);
  const mesh = legs
    .flatMap((one, i) =>
      legs.slice(i + 1).map((other) => {
        const beside = joined ? 0 : conductance(legs.filter((leg) => leg !== one && leg !== other));
        const ohms = one.ohms + other.ohms + one.ohms * other.ohms * beside;
        return { one, other, from: farEnd(one, node)!, to: farEnd(other, node)!, ohms };
      }),
    )
    .filter(({ one, other, from, to, ohms }) => {
      const conducts = ohms < Infinity && (!joined || one === joined || other === joined);
      return conducts && from !== to;
    });
  const left = edges.filter((edge) => !legs.includes(edge));
  const { volts, amps, determinant } = starMesh([...left, ...mesh], drive);
  const farVolts = (leg: Edge): number => volts.get(farEnd(leg, node)!) ?? 0;
  const mean = legs.reduce((sum, leg) => sum + farVolts(leg) * (1 / leg.ohms / siemens), 0);
  volts.set(node, joined ? farVolts(joined) : mean);
  for (const edge of mesh) {
    const through = amps.get(edge) ?? 0;
    addTo(amps, edge.one, edge.one.to === node ? through : -through);
    addTo(amps, edge.other, edge.other.from === node ? through : -through);
  }
  return { volts, amps, determinant: determinant * siemens };
}

/** The inner node where the fewest parts meet: to take it out loses the least to rounding. */
function fewestLegs(edges: readonly Edge[], drive: Element): string | undefined {
  const counts = new Map<string, number>();
  for (const { from, to } of edges) {
    for (const node of [from, to]) {
      if (farEnd(drive, node) === undefined) addTo(counts, node, 1);
    }
  }
  return [...counts].sort(([, one], [, other]) => one - other)[0]?.[0];
}

/** Where all parts lie across the source, each takes its share of the current. */
function acrossDrive(edges: readonly Edge[], drive: Element): Driven {
  const siemens = conductance(edges);
  const through = siemens && (drive.amps ?? drive.volts! * siemens);
  const across = drive.volts ?? (siemens && drive.amps! / siemens);
  const amps = new Map<Edge, number>([[drive, through]]);
  for (const edge of edges) {
    const share = siemens < Infinity ? 1 / edge.ohms / siemens : edge.ohms === 0 ? 1 : 0;
    amps.set(edge, edge.from === drive.to ? through * share : -through * share);
  }
  const volts = new Map([
    [drive.from, 0],
    [drive.to, across],
  ]);
  return { volts, amps, determinant: drive.amps ? siemens : 1 };
}

function conductance(edges: readonly Edge[]): number {
  return edges.reduce((sum, { ohms }) => sum + 1 / ohms, 0);
}
