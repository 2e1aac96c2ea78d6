import { addTo } from './addTo.js';
import type { Determined, Indeterminate } from './determined.js';
import type { Element, Network } from './network.js';
import { pathBetween } from './pathBetween.js';
import { rigidLoops } from './rigidLoops.js';
import { starMesh } from './starMesh.js';

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
  const open = elements.filter((element) => !loops.some(({ closing }) => closing === element));
  const conducting = open.filter(({ ohms }) => ohms < Infinity);
  const volts = new Map<string, number>();
  const amps = new Map<string, number>();
  let determinant = 1;
  for (const drive of open) {
    if (!drive.volts && !drive.amps) continue;
    const edges = conducting.filter((element) => element !== drive);
    const fed = starMesh(edges, drive.from, drive.to);
    if (drive.amps && fed.siemens === 0) continue;
    const through = drive.amps ?? drive.volts! * fed.siemens;
    const across = drive.volts ?? drive.amps! / fed.siemens;
    for (const [node, rise] of fed.volts)
      addTo(volts, node, (rise - (fed.volts.get(reference) ?? 0)) * across);
    for (const edge of edges) addTo(amps, edge.id, (fed.share.get(edge) ?? 0) * through);
    addTo(amps, drive.id, through);
    determinant = fed.determinant * (drive.amps ? fed.siemens : 1);
  }

  const contradictory = loops.filter((loop) => loop.contradictory);
  const lost = (node: string): boolean =>
    contradictory.some(({ closing }) => pathBetween(conducting, closing.from, node));
  const voltsAt = (node: string): Determined<number> => {
    if (lost(node)) return undetermined('circuit-without-solution');
    return pathBetween(conducting, reference, node)
      ? (volts.get(node) ?? 0)
      : { kind: 'floating', reason: 'no-path-to-common' };
  };
  const ampsOf = (element: Element): Determined<number> => {
    const inLoop = loops.filter(({ members }) => members.includes(element));
    if (inLoop.some((loop) => loop.contradictory))
      return { kind: 'unbounded', reason: 'sources-joined-without-resistance' };
    if (element.ohms < Infinity && lost(element.from))
      return undetermined('circuit-without-solution');
    if (inLoop.length > 0) return undetermined('shared-between-zero-ohm-paths');
    return amps.get(element.id) ?? 0;
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
