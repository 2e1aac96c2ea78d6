import { bisection } from '../bisection.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { type Determined, type Indeterminate, isDetermined } from '../circuit/determined.js';
import type { CircuitFault } from '../circuit/faults.js';
import type { Element } from '../circuit/network.js';
import {
  atState,
  heat,
  type OperatingNetwork,
  operatingNetwork,
} from '../circuit/operatingPoint.js';
import type { Amps, Ohms, Position, Watts } from '../units.js';

/** The largest value of a quantity over the wiper's way, and where it stands then. */
export interface Worst<Unit extends number> {
  /** The largest value, in its unit. */
  readonly value: Determined<Unit>;
  /** Where the wiper stands then: fraction of the track, 0 to 1. */
  readonly position: Position;
}

/** The worst that a circuit does to its parts, wherever the wiper stands. */
export interface WorstCase {
  /** Heat of the track as though all of it carried the current of its hottest piece, W: what a power rating limits. */
  readonly track: Worst<Watts>;
  /** Current through the wiper's contact, A. */
  readonly wiper: Worst<Amps>;
  /** Heat in the limiter, W. */
  readonly limiter: Worst<Watts>;
  /** Current out of the source, A. */
  readonly source: Worst<Amps>;
}

/** The currents whose sizes decide, by the parts that carry them. */
const quantities = {
  track: /^track(Above|Below)/,
  wiper: /^contact$/,
  limiter: /^limiter$/,
  source: /^source$/,
};
type Quantity = keyof typeof quantities;

/**
 * Finds the worst wiper position for each part of a checked circuit, exactly.
 *
 * Between two cuts of the track each current is a quotient of two quadratics in the wiper's position, over one
 * determinant: three solutions give both, the roots of the derivative's quadratic numerator are the only places
 * inside where it can be extreme, and the circuit is solved anew there. A source with a current limit has these
 * places in both of its states, and the places where it changes from one to the other.
 */
export function worstCase(circuit: Circuit): WorstCase {
  const ends = [positionAt(circuit.sensor, 0), positionAt(circuit.sensor, 1)].sort((a, b) => a - b);
  const cuts = [ends[0]!, ...trackCuts(circuit.faults ?? []), ends[1]!].filter(
    (at) => at >= ends[0]! && at <= ends[1]!,
  );
  const places = new Set(cuts);
  for (let i = 1; i < cuts.length; i++) {
    const [from, to] = [cuts[i - 1]!, cuts[i]!];
    for (const place of turningPlaces(circuit, from, to)) places.add(place);
    // At the very end of a stretch 0 Ω parts can share a current; what it tends to there counts.
    for (const part of [1e-9, 1 - 1e-9]) places.add(from + (to - from) * part);
  }
  const ordered = [...places].sort((a, b) => a - b);
  return largest(
    circuit,
    circuit.source.currentLimit === undefined ? ordered : withChanges(circuit, ordered),
  );
}

function trackCuts(faults: readonly CircuitFault[]): readonly Position[] {
  const cuts = faults.flatMap((fault) => {
    if (fault.kind === 'shorted-track') return [fault.from, fault.to];
    return fault.kind === 'broken-track' ? [fault.position] : [];
  });
  return cuts.sort((a, b) => a - b);
}

/** Where the currents of each state can turn inside a stretch of the track. */
function turningPlaces(circuit: Circuit, from: Position, to: Position): readonly Position[] {
  if (!(to > from)) return [];
  // Without a limit both states are one.
  const states = new Set([undefined, circuit.source.currentLimit]);
  return [...states].flatMap((held) => {
    const samples = [0.25, 0.5, 0.75].map((part) =>
      atState(circuit, from + (to - from) * part, held),
    );
    const wanted = Object.keys(samples[0]!.solution.amps).filter((part) =>
      Object.values(quantities).some((pattern) => pattern.test(part)),
    );
    // Conductances of the two pieces of track grow without bound at its ends: times ¼·¾, ½·½, ¾·¼ it is a quadratic.
    const determinants = samples.map(({ solution }, i) => solution.determinant * [3, 4, 3][i]!);
    const determinant = quadratic(determinants);
    return wanted.flatMap((part) => {
      const amps = samples.map(({ solution }) => solution.amps[part]!);
      if (!amps.every(isDetermined)) return [];
      const numerator = quadratic(amps.map((value, i) => value * determinants[i]!));
      return turns(numerator, determinant).map((part) => from + (to - from) * part);
    });
  });
}

type Quadratic = readonly [number, number, number];

/** The quadratic c0 + c1·x + c2·x² through values at ¼, ½ and ¾. */
function quadratic([a, b, c]: readonly number[]): Quadratic {
  return [3 * a! - 3 * b! + c!, -10 * a! + 16 * b! - 6 * c!, 8 * a! - 16 * b! + 8 * c!];
}

/** Where a quotient of quadratics turns, inside 0 to 1: the roots of N′D − ND′, whose cubes cancel. */
function turns([n0, n1, n2]: Quadratic, [d0, d1, d2]: Quadratic): readonly number[] {
  const c = n1 * d0 - n0 * d1;
  const b = 2 * (n2 * d0 - n0 * d2);
  const a = n2 * d1 - n1 * d2;
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
  const q = -(b + (b < 0 ? -root : root)) / 2;
  return [q / a, c / q].filter((x) => x > 0 && x < 1);
}

/** Adds the places, between neighbours in different states, where the source reaches its limit. */
function withChanges(circuit: Circuit, places: readonly Position[]): readonly Position[] {
  const state = (at: Position) => operatingNetwork(circuit, at).sourceState;
  const all = [...places];
  for (let i = 1; i < places.length; i++) {
    const [from, to] = [places[i - 1]!, places[i]!];
    const before = state(from);
    if (state(to) === before) continue;
    all.push(...bisection((at) => state(at) === before, from, to, 1e-18));
  }
  return all;
}

function largest(circuit: Circuit, places: readonly Position[]): WorstCase {
  const solved = places.map((position) => ({ position, ...operatingNetwork(circuit, position) }));
  const worst = (quantity: Quantity, measure: (amps: Amps) => number): Worst<number> => {
    let most: Worst<number> | undefined;
    let shared: Worst<number> | undefined;
    for (const at of solved) {
      const { position } = at;
      const value = sizeAt(at, quantity);
      if (isDetermined(value)) {
        if (!most || measure(value) > (most.value as number))
          most = { value: measure(value), position };
      } else if (value.reason === 'shared-between-zero-ohm-paths') shared = { value, position };
      else return { value, position };
    }
    return most ?? shared ?? { value: 0, position: places[0]! };
  };
  const heatIn = (ohms: Ohms) => (amps: Amps) => heat(amps, ohms) as Watts;
  const limiter = circuit.faults?.some(({ kind }) => kind === 'no-limiter') ? 0 : circuit.limiter;
  return {
    track: worst('track', heatIn(circuit.sensor.track)),
    wiper: worst('wiper', (amps) => amps),
    limiter: worst('limiter', heatIn(limiter)),
    source: worst('source', (amps) => amps),
  };
}

/** A piece without length, away from the wiper: the wiper next to one is the limit of a short piece, this is none. */
function isOuterEnd(element: Element): boolean {
  return element.ohms === 0 && /^track(Above|Below)\d/.test(element.id);
}

/** The largest current among the parts of a quantity. */
function sizeAt({ network, solution }: OperatingNetwork, quantity: Quantity): Determined<Amps> {
  let size = 0;
  let open: Indeterminate | undefined;
  for (const element of network.elements) {
    if (!quantities[quantity].test(element.id)) continue;
    if (isOuterEnd(element)) continue;
    const amps = solution.amps[element.id]!;
    if (isDetermined(amps)) size = Math.max(size, Math.abs(amps));
    else if (open?.kind !== 'unbounded') open = amps;
  }
  return open ?? size;
}
