import { addTo } from './addTo.js';
import type { Determined, Indeterminate } from './determined.js';
import type { Element, Network } from './network.js';
import { reachedFrom } from './reachedFrom.js';
import { isContradictory, rigidLoops } from './rigidLoops.js';
import { type Edge, starMesh } from './starMesh.js';

/** Voltages of the nodes above the reference and currents of the elements, by name. */
export interface NetworkSolution {
  readonly volts: Readonly<Record<string, Determined<number>>>;
  readonly amps: Readonly<Record<string, Determined<number>>>;
  /** Determinant of the network up to a constant factor of its form; 1 without a source. */
  readonly determinant: number;
}

/**
 * Solves a network of resistances and ideal sources.
 *
 * Each source is solved alone by {@link starMesh}, the others at rest, and the results are added (superposition).
 * Loops without resistance are opened first: where their sources disagree there is no solution, elsewhere only the
 * loop's currents are undetermined. A current source without a way back drives nothing.
 */
export function solveNetwork({ reference, elements }: Network): NetworkSolution {
  const loops = rigidLoops(elements);
  const open = elements.filter((element) => !loops.some(([closing]) => closing === element));
  const conducting = open.filter(({ ohms }) => ohms < Infinity);
  const volts = new Map<string, number>();
  const amps = new Map<Edge, number>();
  let determinant = 1;
  for (const drive of open.filter((element) => element.volts || element.amps)) {
    const edges = conducting.filter((element) => element !== drive);
    const driven = starMesh(edges, drive);
    const common = driven.volts.get(reference) ?? 0;
    for (const [node, rise] of driven.volts) addTo(volts, node, rise - common);
    for (const [edge, current] of driven.amps) addTo(amps, edge, current);
    determinant = driven.determinant || determinant;
  }

  const contradictory = loops.filter(isContradictory);
  const astray = contradictory.map(([closing]) => reachedFrom(conducting, closing!.from));
  const lost = (node: string): boolean => astray.some((nodes) => nodes.has(node));
  const grounded = reachedFrom(conducting, reference);
  const voltsAt = (node: string): Determined<number> =>
    lost(node)
      ? undetermined('circuit-without-solution')
      : grounded.has(node)
        ? (volts.get(node) ?? 0)
        : { kind: 'floating', reason: 'no-path-to-common' };
  const ampsOf = (element: Element): Determined<number> => {
    const isIn = (loop: readonly Element[]): boolean => loop.includes(element);
    if (contradictory.some(isIn))
      return { kind: 'unbounded', reason: 'sources-joined-without-resistance' };
    if (element.ohms < Infinity && lost(element.from))
      return undetermined('circuit-without-solution');
    if (loops.some(isIn)) return undetermined('shared-between-zero-ohm-paths');
    return amps.get(element) ?? 0;
  };
  const nodes = elements.flatMap(({ from, to }) => [from, to]);
  return {
    volts: Object.fromEntries(nodes.map((node) => [node, voltsAt(node)])),
    amps: Object.fromEntries(elements.map((element) => [element.id, ampsOf(element)])),
    determinant,
  };
}

function undetermined(reason: Indeterminate['reason']): Indeterminate {
  return { kind: 'undetermined', reason };
}
