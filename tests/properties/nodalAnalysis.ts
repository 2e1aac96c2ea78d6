import type { Circuit, CircuitFault } from '@truesweep/core';
import { all, type BigNumber, create } from 'mathjs';

/** The tolerances keep mathjs from taking small numbers for zero in its pivots. */
const math = create(all!, { number: 'BigNumber', precision: 64, relTol: 1e-60, absTol: 1e-300 });

/** The binary value itself; mathjs would take the shortest decimal that reads back as it. */
function big(value: number): BigNumber {
  let halvings = 0;
  let whole = value;
  for (; !Number.isInteger(whole); whole *= 2) halvings++;
  return math.bignumber(BigInt(whole).toString()).div(math.bignumber(2).pow(halvings));
}

/** One branch of the raw circuit: a resistance, a voltage source or a current source. */
export interface Branch {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly ohms?: BigNumber;
  readonly volts?: BigNumber;
  readonly amps?: BigNumber;
}

export interface NodalSolution {
  readonly branches: readonly Branch[];
  /** Nodes with a path to common only. */
  readonly volts: ReadonlyMap<string, BigNumber>;
  readonly amps: ReadonlyMap<string, BigNumber>;
  /** Where a loop of 0 Ω parts and sources leaves currents open, or contradicts itself. */
  readonly loop: 'none' | 'consistent' | 'contradictory';
  readonly atLimit: boolean;
}

/**
 * Modified nodal analysis (Ho, Ruehli and Brennan, IEEE Trans. Circuits and Systems 22, 1975; from
 * memory) in 64-digit arithmetic, straight from the description of the circuit and independent of the
 * code under test: a row for each node, a branch-current row for each source and each 0 Ω, nothing for ∞.
 */
export function nodalAnalysis(circuit: Circuit, position: number): NodalSolution {
  const branches = branchesOf(circuit, position);
  const free = solve(branches);
  const limit = circuit.source.currentLimit;
  const drawn = free.amps.get('source');
  const over =
    free.loop === 'contradictory' ? sourceInLoop(branches) : drawn?.abs().gt(limit ?? 1e300);
  if (limit === undefined || !over) return { ...free, atLimit: false };
  const limited = branches.map((branch): Branch => {
    if (branch.name !== 'source') return branch;
    const { name, from, to, volts } = branch;
    return { name, from, to, amps: big(limit).times(Math.sign(volts!.toNumber())) };
  });
  return { ...solve(limited), atLimit: true };
}

function solve(branches: readonly Branch[]): Omit<NodalSolution, 'atLimit'> {
  const { tree, loop } = withoutRigidLoops(branches);
  const islands = islandsOf(tree);
  const nodes = islands.flatMap((island) => island.slice(1));
  const used = tree;
  const withCurrent = used.filter(({ ohms, volts }) => volts || ohms?.isZero());
  const size = nodes.length + withCurrent.length;
  const matrix = Array.from({ length: size }, () => Array.from({ length: size }, () => big(0)));
  const right = Array.from({ length: size }, () => big(0));
  const add = (row: number, column: number, value: BigNumber): void => {
    if (row >= 0 && column >= 0) matrix[row]![column] = matrix[row]![column]!.plus(value);
  };
  for (const { from, to, ohms, amps } of used) {
    const [a, b] = [nodes.indexOf(from), nodes.indexOf(to)];
    if (amps) {
      if (a >= 0) right[a] = right[a]!.minus(amps);
      if (b >= 0) right[b] = right[b]!.plus(amps);
    }
    if (!ohms || ohms.isZero()) continue;
    const conductance = big(1).div(ohms);
    add(a, a, conductance);
    add(b, b, conductance);
    add(a, b, conductance.negated());
    add(b, a, conductance.negated());
  }
  for (const [i, { from, to, volts }] of withCurrent.entries()) {
    const row = nodes.length + i;
    const [a, b] = [nodes.indexOf(from), nodes.indexOf(to)];
    add(a, row, big(1));
    add(b, row, big(-1));
    add(row, b, big(1));
    add(row, a, big(-1));
    if (volts) right[row] = volts;
  }
  const solution = (math.lusolve(matrix, right) as unknown as BigNumber[][]).map(([x]) =>
    math.bignumber(x!),
  );
  const local = new Map(islands.map(([reference]) => [reference!, big(0)]));
  for (const [i, node] of nodes.entries()) local.set(node, solution[i]!);
  const amps = new Map<string, BigNumber>();
  for (const branch of used) {
    const row = withCurrent.indexOf(branch);
    if (branch.amps) amps.set(branch.name, branch.amps);
    else if (row >= 0) amps.set(branch.name, solution[nodes.length + row]!);
    else
      amps.set(branch.name, local.get(branch.from)!.minus(local.get(branch.to)!).div(branch.ohms!));
  }
  const tied = islands.find(([reference]) => reference === 'common') ?? ['common'];
  const volts = new Map(tied.map((node) => [node, local.get(node) ?? big(0)]));
  return { branches, volts, amps, loop };
}

const track = (at: number): string => `track@${at}`;

/** Every branch of the description, its faults worked in; those of ∞ Ω are left out. */
function branchesOf(circuit: Circuit, position: number): readonly Branch[] {
  const { source, leads, sensor, load, faults = [] } = circuit;
  const on = circuit.connection ?? { supply: 'top', ground: 'bottom', signal: 'wiper' };
  const has = (kind: CircuitFault['kind']): boolean => faults.some((fault) => fault.kind === kind);
  const all = <Kind extends CircuitFault['kind']>(kind: Kind) =>
    faults.filter((fault): fault is Extract<CircuitFault, { kind: Kind }> => fault.kind === kind);
  const list: Branch[] = [];
  const resistor = (name: string, from: string, to: string, ohms: number | BigNumber = 0): void => {
    if (ohms === Number.POSITIVE_INFINITY) return;
    list.push({ name, from, to, ohms: typeof ohms === 'number' ? big(ohms) : ohms });
  };
  const broken = (lead: 'supply' | 'ground' | 'signal', ohms = 0): number =>
    all('broken-lead').some((fault) => fault.lead === lead) ? Number.POSITIVE_INFINITY : ohms;

  const volts = all('wrong-source').at(-1)?.volts ?? source.volts;
  const reversed = all('reversed-source').length % 2 === 1;
  list.push({
    name: 'source',
    from: 'common',
    to: 'sourceInside',
    volts: big(reversed ? -volts : volts),
  });
  resistor('sourceResistance', 'sourceInside', 'sourcePlus', source.ohms);
  resistor('limiter', 'sourcePlus', 'limited', has('no-limiter') ? 0 : circuit.limiter);
  resistor('supplyLead', 'limited', on.supply, broken('supply', leads?.supply));
  resistor('groundLead', on.ground, 'common', broken('ground', leads?.ground));
  resistor('signalLead', on.signal, 'signal', broken('signal', leads?.signal));

  const built = sensor.terminalResistors ?? {};
  const inside = (terminal: 'top' | 'bottom' | 'wiper'): string =>
    built[terminal] ? `${terminal}Inside` : terminal;
  if (built.top) resistor('topTerminal', 'top', 'topInside', built.top);
  if (built.bottom) resistor('bottomTerminal', 'bottomInside', 'bottom', built.bottom);
  if (built.wiper) resistor('wiperTerminal', 'wiperInside', 'wiper', built.wiper);
  resistor('topResidual', inside('top'), 'trackTop', sensor.topResidual);
  resistor('bottomResidual', 'trackBottom', inside('bottom'), sensor.bottomResidual);
  resistor(
    'contact',
    'track',
    inside('wiper'),
    has('lifted-wiper') ? Number.POSITIVE_INFINITY : sensor.contact,
  );

  const shorted = all('shorted-track').map(
    ({ from, to }) => [Math.min(from, to), Math.max(from, to)] as const,
  );
  const cuts = [...new Set(shorted.flat())].sort((a, b) => a - b);
  const places = [
    { at: 0, node: 'trackBottom' },
    ...cuts.filter((at) => at <= position && at < 1).map((at) => ({ at, node: track(at) })),
    { at: position, node: 'track' },
    ...cuts.filter((at) => at > position || at === 1).map((at) => ({ at, node: track(at) })),
    { at: 1, node: 'trackTop' },
  ];
  const breaks = all('broken-track').map((fault) => fault.position);
  for (let i = 1; i < places.length; i++) {
    const [lower, upper] = [places[i - 1]!, places[i]!];
    const last = i === places.length - 1;
    if (breaks.some((at) => at >= lower.at && (at < upper.at || (last && at === 1)))) continue;
    const length = big(upper.at).minus(big(lower.at));
    const wiperAt = places.findIndex(({ node }) => node === 'track');
    const farther = i <= wiperAt ? wiperAt - i : i - wiperAt - 1;
    const name = `${i <= wiperAt ? 'trackBelow' : 'trackAbove'}${farther > 0 ? farther + 1 : ''}`;
    if (length.isZero()) resistor(name, upper.node, lower.node);
    else if (sensor.track !== Number.POSITIVE_INFINITY) {
      resistor(name, upper.node, lower.node, length.times(big(sensor.track)));
    }
  }
  shorted.forEach(([from, to], i) => {
    resistor(`trackShort${i + 1}`, track(to), track(from));
  });

  let shorts = 0;
  for (const fault of faults) {
    const ends =
      fault.kind === 'shorted-leads'
        ? [on[fault.leads[0]], on[fault.leads[1]]]
        : fault.kind === 'shorted-terminals'
          ? fault.terminals
          : fault.kind === 'shorted-signal'
            ? [
                'signal',
                fault.to === 'source' ? 'sourcePlus' : fault.to === 'supply' ? 'limited' : 'common',
              ]
            : undefined;
    if (ends) resistor(`short${++shorts}`, ends[0]!, ends[1]!);
  }

  const common = load.common === 'sensor' ? on.ground : 'common';
  if (load.pullDown !== undefined) resistor('pullDown', 'signal', common, load.pullDown);
  if (load.pullUp && 'from' in load.pullUp) {
    resistor(
      'pullUp',
      load.pullUp.from === 'source' ? 'sourcePlus' : on.supply,
      'signal',
      load.pullUp.ohms,
    );
  } else if (load.pullUp) {
    list.push({
      name: 'pullUpSource',
      from: common,
      to: 'pullUpFeed',
      volts: big(load.pullUp.volts),
    });
    resistor('pullUp', 'pullUpFeed', 'signal', load.pullUp.ohms);
  }
  return list;
}

/** Leaves out each branch that would close a loop of 0 Ω parts and voltage sources (union-find with potentials). */
function withoutRigidLoops(branches: readonly Branch[]): {
  readonly tree: readonly Branch[];
  readonly loop: NodalSolution['loop'];
} {
  const group = new Map<string, { root: string; above: BigNumber }>();
  const place = (node: string) => group.get(node) ?? { root: node, above: big(0) };
  let loop: NodalSolution['loop'] = 'none';
  const tree = branches.filter(({ from, to, ohms, volts }) => {
    if (!volts && !ohms?.isZero()) return true;
    const [a, b] = [place(from), place(to)];
    const rise = volts ?? big(0);
    if (a.root === b.root) {
      const agrees = b.above.minus(a.above).eq(rise);
      loop = agrees && loop !== 'contradictory' ? 'consistent' : 'contradictory';
      return false;
    }
    const shift = a.above.plus(rise).minus(b.above);
    const moved = [...group].filter(([node, { root }]) => root === b.root && node !== b.root);
    for (const [node, { above }] of moved)
      group.set(node, { root: a.root, above: above.plus(shift) });
    group.set(b.root, { root: a.root, above: shift });
    return true;
  });
  return { tree, loop };
}

/** Whether the source itself lies in a contradictory loop: its current is then over any limit. */
function sourceInLoop(branches: readonly Branch[]): boolean {
  const rest = branches.filter(({ name }) => name !== 'source');
  return withoutRigidLoops(rest).loop !== 'contradictory';
}

/** The connected parts of the circuit, each with the node that its voltages count from first. */
function islandsOf(branches: readonly Branch[]): readonly (readonly string[])[] {
  const left = new Set(['common', ...branches.flatMap(({ from, to }) => [from, to])]);
  const islands: string[][] = [];
  for (const start of left) {
    const island = new Set([start]);
    for (const node of island) {
      for (const { from, to, amps } of branches) {
        if (amps) continue;
        if (from === node) island.add(to);
        if (to === node) island.add(from);
      }
    }
    for (const node of island) left.delete(node);
    islands.push([...island]);
  }
  return islands;
}
