import type { Determined } from './determined.js';
import type { CurrentSource, Element, Network, VoltageSource } from './network.js';
import { type RigidLoop, rigidLoops } from './rigidLoops.js';
import { share, starMesh } from './starMesh.js';

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
 * Each source is solved alone by {@link starMesh}, the others taken as 0 Ω (voltage) or no connection
 * (current), and the results are added (superposition). Loops without resistance are looked for first:
 * where their sources disagree there is no solution, elsewhere only the loop's currents are undetermined.
 * A current source without a way back drives nothing.
 */
export function solveNetwork(network: Network): NetworkSolution {
  const present = network.elements.filter(
    (element) => element.kind !== 'resistor' || element.ohms !== Infinity,
  );
  const loops = rigidLoops(present);
  const closing = new Set(loops.map((loop) => loop.closing));
  const elements = present.filter((element) => !closing.has(element));
  const nodes = nodeIndex(network);
  const volts = new Float64Array(nodes.size);
  const amps = new Map<string, number>(network.elements.map((element) => [element.id, 0]));
  const reference = nodes.get(network.reference)!;
  const tied = tiedTogether(network);
  const determinants = new Map<string, number>();
  for (const source of elements) {
    if (!isDrive(source)) continue;
    const own = addDrive(source, elements, nodes, reference, volts, amps);
    determinants.set(tied(source.to), own);
  }
  const determinant = [...determinants.values()].reduce((product, own) => product * own, 1);
  return { ...collect(network, nodes, volts, amps, loops, tied), determinant };
}

function nodeIndex(network: Network): Map<string, number> {
  const nodes = new Map([[network.reference, 0]]);
  for (const { from, to } of network.elements) {
    for (const node of [from, to]) if (!nodes.has(node)) nodes.set(node, nodes.size);
  }
  return nodes;
}

function isDrive(element: Element): element is VoltageSource | CurrentSource {
  return (
    (element.kind === 'voltage' && element.volts !== 0) ||
    (element.kind === 'current' && element.amps !== 0)
  );
}

function addDrive(
  drive: VoltageSource | CurrentSource,
  elements: readonly Element[],
  nodes: ReadonlyMap<string, number>,
  reference: number,
  volts: Float64Array,
  amps: Map<string, number>,
): number {
  const size = nodes.size;
  const matrix = new Float64Array(size * size);
  for (const element of elements) {
    const conductance = element === drive ? 0 : conductanceOf(element);
    const from = nodes.get(element.from)!;
    const to = nodes.get(element.to)!;
    if (from === to || conductance === 0) continue;
    matrix[from * size + to]! += conductance;
    matrix[to * size + from]! += conductance;
  }
  const first = nodes.get(drive.from)!;
  const second = nodes.get(drive.to)!;
  const reduced = starMesh(size, matrix, first, second);
  if (drive.kind === 'current' && reduced.conductance === 0) return reduced.determinant;
  const [across, through] =
    drive.kind === 'voltage'
      ? [drive.volts, drive.volts * reduced.conductance]
      : [drive.amps / reduced.conductance, drive.amps];
  const offset = reduced.voltage[reference]!;
  for (let node = 0; node < size; node++) {
    const rise = reduced.voltage[node]! - (Number.isNaN(offset) ? 0 : offset);
    if (!Number.isNaN(rise)) volts[node]! += rise * across;
  }
  for (const element of elements) {
    const part =
      element === drive ? through : through * fraction(element, nodes, matrix, reduced.current);
    amps.set(element.id, amps.get(element.id)! + part);
  }
  return drive.kind === 'voltage' ? reduced.determinant : reduced.determinant * reduced.conductance;
}

function conductanceOf(element: Element): number {
  if (element.kind === 'resistor') return 1 / element.ohms;
  return element.kind === 'voltage' ? Infinity : 0;
}

function fraction(
  element: Element,
  nodes: ReadonlyMap<string, number>,
  matrix: Float64Array,
  current: Float64Array,
): number {
  const at = nodes.get(element.from)! * nodes.size + nodes.get(element.to)!;
  return current[at]! * share(conductanceOf(element), matrix[at]!);
}

function collect(
  network: Network,
  nodes: ReadonlyMap<string, number>,
  volts: Float64Array,
  amps: ReadonlyMap<string, number>,
  loops: readonly RigidLoop[],
  tied: (node: string) => string,
): Omit<NetworkSolution, 'determinant'> {
  const lost = new Set(
    loops.filter((loop) => loop.contradictory).map((loop) => tied(loop.closing.from)),
  );
  const reference = tied(network.reference);
  const nodeVolts: Record<string, Determined<number>> = {};
  for (const [node, at] of nodes) {
    if (lost.has(tied(node))) {
      nodeVolts[node] = { kind: 'undetermined', reason: 'circuit-without-solution' };
    } else if (tied(node) !== reference) {
      nodeVolts[node] = { kind: 'floating', reason: 'no-path-to-common' };
    } else nodeVolts[node] = volts[at]!;
  }
  const elementAmps: Record<string, Determined<number>> = {};
  for (const element of network.elements) {
    const around = loops.filter(({ members }) => members.includes(element));
    const loop = around.find(({ contradictory }) => contradictory) ?? around[0];
    const broken = element.kind === 'resistor' && element.ohms === Infinity;
    if (loop?.contradictory) {
      elementAmps[element.id] = { kind: 'unbounded', reason: 'sources-joined-without-resistance' };
    } else if (!broken && lost.has(tied(element.from))) {
      elementAmps[element.id] = { kind: 'undetermined', reason: 'circuit-without-solution' };
    } else if (loop) {
      elementAmps[element.id] = { kind: 'undetermined', reason: 'shared-between-zero-ohm-paths' };
    } else elementAmps[element.id] = amps.get(element.id)!;
  }
  return { volts: nodeVolts, amps: elementAmps };
}

/** Names the connected part of the network that a node belongs to (union-find). */
function tiedTogether(network: Network): (node: string) => string {
  const parent = new Map<string, string>();
  const root = (node: string): string => {
    let at = node;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    return at;
  };
  for (const element of network.elements) {
    if (element.kind === 'current') continue;
    if (element.kind === 'resistor' && element.ohms === Infinity) continue;
    const from = root(element.from);
    const to = root(element.to);
    if (from !== to) parent.set(from, to);
  }
  return root;
}
