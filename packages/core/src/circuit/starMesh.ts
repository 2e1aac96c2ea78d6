/**
 * The share of each leg and edge in a network that is fed at two terminals, per volt or ampere of feed.
 */
export interface TwoTerminal {
  /** Conductance between the terminals, S; `Infinity` where 0 Ω joins them. */
  readonly conductance: number;
  /** Voltage of each node above the first terminal for 1 V across the terminals; NaN where no path leads to either. */
  readonly voltage: Float64Array;
  /** Row by row, the fraction of the total current that flows from node i to node j. */
  readonly current: Float64Array;
  /** Determinant of the nodes taken out, up to a constant factor of the network's form: the product of their ΣG. */
  readonly determinant: number;
}

interface Elimination {
  readonly node: number;
  readonly neighbours: readonly number[];
  readonly legs: Float64Array;
  readonly before: Float64Array;
  /** ΣG of the node, 1 where it was joined to another by 0 Ω. */
  readonly pivot: number;
}

/**
 * Reduces a resistive network to its two terminals by star-mesh transformations and hands the currents
 * back along the same way. Conductances are only added, multiplied and divided, never subtracted, so
 * nothing cancels; a current of a part is a sum of shares, never what the others leave over.
 *
 * Method: star-mesh transformation (L. Rosen, "A new network theorem", Journal of the IEE 62, 1924),
 * whose one-node case is Millman's theorem.
 *
 * @param size Number of nodes.
 * @param conductance Symmetric matrix, row by row, S; `Infinity` for 0 Ω. No loop of 0 Ω may be in it.
 * @param first Index of the terminal that voltages count from.
 * @param second Index of the other terminal.
 */
export function starMesh(
  size: number,
  conductance: Float64Array,
  first: number,
  second: number,
): TwoTerminal {
  const mesh = Float64Array.from(conductance);
  const left = new Set([...component(size, mesh, first), ...component(size, mesh, second)]);
  left.delete(first);
  left.delete(second);
  const eliminations: Elimination[] = [];
  while (left.size > 0) {
    const node = fewestNeighbours(size, mesh, left);
    eliminations.push(eliminate(size, mesh, node));
    left.delete(node);
  }
  return handBack(size, mesh, first, second, eliminations);
}

/** The nodes that can be reached from `start`; a set's iteration also visits what is added meanwhile. */
function component(size: number, mesh: Float64Array, start: number): ReadonlySet<number> {
  const reached = new Set([start]);
  for (const node of reached) {
    for (let other = 0; other < size; other++)
      if (mesh[node * size + other]! > 0) reached.add(other);
  }
  return reached;
}

function fewestNeighbours(size: number, mesh: Float64Array, nodes: ReadonlySet<number>): number {
  let best = -1;
  let fewest = Infinity;
  for (const node of nodes) {
    let count = 0;
    for (let other = 0; other < size; other++) if (mesh[node * size + other]! > 0) count++;
    if (count < fewest) {
      fewest = count;
      best = node;
    }
  }
  return best;
}

/** Takes one node out: every pair of its legs becomes an edge of G_i·G_j / ΣG. */
function eliminate(size: number, mesh: Float64Array, node: number): Elimination {
  const before = Float64Array.from(mesh);
  const neighbours: number[] = [];
  for (let other = 0; other < size; other++) {
    if (mesh[node * size + other]! > 0) neighbours.push(other);
  }
  const legs = Float64Array.from(neighbours, (other) => mesh[node * size + other]!);
  for (let i = 0; i < neighbours.length; i++) {
    for (let j = i + 1; j < neighbours.length; j++) {
      const added = meshEdge(legs, i, j);
      mesh[neighbours[i]! * size + neighbours[j]!]! += added;
      mesh[neighbours[j]! * size + neighbours[i]!]! += added;
    }
    mesh[node * size + neighbours[i]!] = 0;
    mesh[neighbours[i]! * size + node] = 0;
  }
  return { node, neighbours, legs, before, pivot: legs.includes(Infinity) ? 1 : sumOf(legs) };
}

function sumOf(legs: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < legs.length; k++) sum += legs[k]!;
  return sum;
}

/** G_i·G_j / ΣG, and its limit where a leg is 0 Ω: the node then is that leg's far end. */
function meshEdge(legs: Float64Array, i: number, j: number): number {
  const joined = legs.indexOf(Infinity);
  if (joined >= 0) return i === joined ? legs[j]! : j === joined ? legs[i]! : 0;
  return legs[i]! * (legs[j]! / sumOf(legs));
}

function handBack(
  size: number,
  mesh: Float64Array,
  first: number,
  second: number,
  eliminations: readonly Elimination[],
): TwoTerminal {
  const total = mesh[first * size + second]!;
  const current = new Float64Array(size * size);
  current[second * size + first] = 1;
  current[first * size + second] = -1;
  const voltage = new Float64Array(size).fill(Number.NaN);
  voltage[first] = 0;
  voltage[second] = total === Infinity ? 0 : 1;
  let after = mesh;
  for (let step = eliminations.length - 1; step >= 0; step--) {
    const { node, neighbours, legs, before } = eliminations[step]!;
    voltage[node] = weightedMean(neighbours, legs, voltage);
    for (let i = 0; i < neighbours.length; i++) {
      for (let j = i + 1; j < neighbours.length; j++) {
        const from = neighbours[i]!;
        const to = neighbours[j]!;
        const whole = current[from * size + to]!;
        const edge = after[from * size + to]!;
        const through = whole * share(meshEdge(legs, i, j), edge);
        setCurrent(current, size, from, to, whole * share(before[from * size + to]!, edge));
        setCurrent(current, size, from, node, current[from * size + node]! + through);
        setCurrent(current, size, node, to, current[node * size + to]! + through);
      }
    }
    after = before;
  }
  const determinant = eliminations.reduce((product, { pivot }) => product * pivot, 1);
  return { conductance: total, voltage, current, determinant };
}

/** Millman's theorem: the conductance-weighted mean of the voltages at the legs' far ends. */
function weightedMean(nodes: readonly number[], legs: Float64Array, voltage: Float64Array): number {
  const joined = legs.indexOf(Infinity);
  if (joined >= 0) return voltage[nodes[joined]!]!;
  let sum = 0;
  let weight = 0;
  for (let i = 0; i < nodes.length; i++) {
    sum += legs[i]! * voltage[nodes[i]!]!;
    weight += legs[i]!;
  }
  return sum / weight;
}

/** The part of an edge's current that one of its parallel conductances carries. */
export function share(conductance: number, edge: number): number {
  if (edge === 0) return 0;
  if (edge === Infinity) return conductance === Infinity ? 1 : 0;
  return conductance / edge;
}

function setCurrent(
  current: Float64Array,
  size: number,
  from: number,
  to: number,
  value: number,
): void {
  current[from * size + to] = value;
  current[to * size + from] = -value;
}
