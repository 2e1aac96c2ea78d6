import { addTo } from './addTo.js';

/** A resistance between two nodes; 0 Ω joins them. */
export interface Edge {
  readonly from: string;
  readonly to: string;
  readonly ohms: number;
}

/** A network of resistances fed at two of its nodes, per volt or ampere of feed. */
export interface TwoTerminal {
  /** Conductance between the terminals, S; `Infinity` where 0 Ω joins them. */
  readonly siemens: number;
  /** Voltage of each node above the first terminal for 1 V across the terminals. */
  readonly volts: Map<string, number>;
  /** The fraction of the whole current, in at the second terminal and out at the first, that each edge carries. */
  readonly share: Map<Edge, number>;
  /** Determinant of the nodes taken out, up to a constant factor of the network's form: the product of their ΣG. */
  readonly determinant: number;
}

/**
 * Solves a network of resistances between two terminals: takes a node out by the star-mesh transformation, solves
 * what is left, and hands its voltages and currents back. Nothing is ever subtracted from a conductance, so nothing
 * cancels; a current of a part is a sum of shares, never what the others leave over.
 *
 * Method: star-mesh transformation (L. Rosen, "A new network theorem", Journal of the IEE 62, 1924),
 * whose one-node case is Millman's theorem.
 *
 * @param edges Each below ∞ Ω and between two different nodes, with no loop of 0 Ω among them.
 * @param first The terminal that voltages count from.
 * @param second The other terminal.
 */
export function starMesh(edges: readonly Edge[], first: string, second: string): TwoTerminal {
  const node = fewestLegs(edges, first, second);
  if (node === undefined) return betweenTerminals(edges, first, second);
  const legs = edges.filter(({ from, to }) => from === node || to === node);
  const far = ({ from, to }: Edge): string => (from === node ? to : from);
  const joined = legs.find(({ ohms }) => ohms === 0);
  const siemens = joined ? 1 : conductance(legs);
  const mesh = legs
    .flatMap((one, i) =>
      legs.slice(i + 1).map((other) => ({
        one,
        other,
        from: far(one),
        to: far(other),
        ohms: joined ? one.ohms + other.ohms : one.ohms * (other.ohms * siemens),
      })),
    )
    .filter(({ one, other, from, to, ohms }) => {
      const conducts = ohms < Infinity && (!joined || one === joined || other === joined);
      return conducts && from !== to;
    });
  const left = edges.filter((edge) => !legs.includes(edge));
  const solved = starMesh([...left, ...mesh], first, second);
  const { volts, share } = solved;
  const voltsAt = (leg: Edge): number => volts.get(far(leg)) ?? 0;
  volts.set(
    node,
    joined
      ? voltsAt(joined)
      : legs.reduce((sum, leg) => sum + voltsAt(leg) / leg.ohms, 0) / siemens,
  );
  const flow = (leg: Edge, inward: number): void => {
    addTo(share, leg, leg.to === node ? inward : -inward);
  };
  for (const edge of mesh) {
    const through = share.get(edge) ?? 0;
    flow(edge.one, through);
    flow(edge.other, -through);
  }
  return { ...solved, determinant: solved.determinant * siemens };
}

/** The inner node that the fewest edges meet at: taking it out adds the fewest. */
function fewestLegs(edges: readonly Edge[], first: string, second: string): string | undefined {
  const legs = new Map<string, number>();
  for (const node of edges.flatMap(({ from, to }) => [from, to])) {
    if (node !== first && node !== second) addTo(legs, node, 1);
  }
  const fewest = Math.min(...legs.values());
  return [...legs.keys()].find((node) => legs.get(node) === fewest);
}

function betweenTerminals(edges: readonly Edge[], first: string, second: string): TwoTerminal {
  const siemens = conductance(edges);
  const shareOf = ({ ohms }: Edge): number =>
    siemens < Infinity ? 1 / ohms / siemens : ohms === 0 ? 1 : 0;
  return {
    siemens,
    volts: new Map([
      [first, 0],
      [second, siemens < Infinity ? 1 : 0],
    ]),
    share: new Map(
      edges.map((edge) => [edge, edge.from === second ? shareOf(edge) : -shareOf(edge)]),
    ),
    determinant: 1,
  };
}

function conductance(edges: readonly Edge[]): number {
  return edges.reduce((sum, { ohms }) => sum + 1 / ohms, 0);
}
